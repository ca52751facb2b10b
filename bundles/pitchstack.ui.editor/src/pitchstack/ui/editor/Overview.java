// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import pitchstack.core.units.Scale;
import pitchstack.core.units.TrueMinus;
import pitchstack.edit.Session;
import pitchstack.edit.SessionListener;
import pitchstack.ui.editor.parts.SideView;
import pitchstack.ui.editor.places.Extent;
import pitchstack.ui.editor.places.Scene;

/** The whole drawing in little, with a frame around what is seen of it. The frame can be dragged, and moved by keys. */
final class Overview extends Canvas {
    private static final double BY_KEY = 0.1;
    private static final double BY_PAGE = 0.8;
    private static final double ALL = 1e6;

    private final Session session;
    private final SideView view;
    private final OverviewPainter painter;
    private final Runnable watcher = this::viewChanged;
    private final SessionListener listener = change -> viewChanged();
    private double grip;

    /** @param view what is seen; both live as long as the editor */
    Overview(Composite parent, Session session, SideView view) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.BORDER);
        this.session = session;
        this.view = view;
        painter = new OverviewPainter(view.look());
        setToolTipText("All of the axis, with a frame around what the drawing shows. Drag the frame, or use the arrow keys.");
        view.watch(watcher);
        session.addListener(listener);
        addDisposeListener(event -> {
            view.unwatch(watcher);
            session.removeListener(listener);
        });
        addListener(SWT.Paint, event -> paint(event.gc));
        addListener(SWT.MouseDown, this::press);
        addListener(SWT.MouseMove, event -> {
            if ((event.stateMask & SWT.BUTTON1) != 0) {
                drag(event);
            }
        });
        addListener(SWT.MouseWheel, event -> view.zoom(Math.pow(SideView.ZOOM_STEP, Math.signum(event.count))));
        addListener(SWT.KeyDown, this::key);
        addListener(SWT.Traverse, event -> event.doit |= event.detail == SWT.TRAVERSE_TAB_NEXT
                || event.detail == SWT.TRAVERSE_TAB_PREVIOUS);
        addListener(SWT.FocusIn, event -> redraw());
        addListener(SWT.FocusOut, event -> redraw());
        getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = sentence();
            }
        });
    }

    private void viewChanged() {
        if (!isDisposed()) {
            redraw();
        }
    }

    private String sentence() {
        Scene scene = view.scene();
        Extent seen = scene.mapping().places(scene.open());
        Scale scale = scene.spec().scale();
        return "Overview of the drawing; it shows " + TrueMinus.in(scale.format(Math.round(seen.from())) + " to "
                + scale.format(Math.round(seen.to())));
    }

    private void paint(GC gc) {
        painter.paint(gc, getClientArea(), view.scene());
        if (isFocusControl()) {
            Rectangle area = getClientArea();
            gc.drawFocus(0, 0, area.width, area.height);
        }
    }

    /** Beside the frame a press moves the middle of the frame there; inside, the frame is taken where it is. */
    private void press(Event event) {
        setFocus();
        Rectangle frame = painter.frame(getClientArea(), view.scene());
        grip = frame.contains(event.x, event.y) ? event.x - (frame.x + frame.width / 2.0) : 0;
        drag(event);
    }

    private void drag(Event event) {
        Scene scene = view.scene();
        double middle = painter.place(getClientArea(), scene, event.x - grip);
        view.scrollTo((int) Math.round(scene.mapping().px(middle) - scene.open().middle() + scene.left()), view.scrolled().y);
    }

    private void key(Event event) {
        switch (event.keyCode) {
            case SWT.ARROW_LEFT -> view.scrollBy(-BY_KEY);
            case SWT.ARROW_RIGHT -> view.scrollBy(BY_KEY);
            case SWT.PAGE_UP -> view.scrollBy(-BY_PAGE);
            case SWT.PAGE_DOWN -> view.scrollBy(BY_PAGE);
            case SWT.HOME -> view.scrollBy(-ALL);
            case SWT.END -> view.scrollBy(ALL);
            case '+', SWT.KEYPAD_ADD -> view.zoom(SideView.ZOOM_STEP);
            case '-', SWT.KEYPAD_SUBTRACT -> view.zoom(1 / SideView.ZOOM_STEP);
            default -> { }
        }
    }
}
