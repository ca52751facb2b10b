// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.guide;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import org.eclipse.jface.action.Action;
import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTException;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.part.ViewPart;
import pitchstack.ui.views.BesideEditor;
import pitchstack.ui.views.guide.GuideText.Span;

/** The User guide view. Links are followed by a click, or by Tab to the next one and Enter. */
public final class GuideView extends ViewPart {
    /** Id of this view. */
    public static final String ID = "pitchstack.ui.views.guide";

    private final GuideSource source = new GuideSource();
    private final Deque<String> before = new ArrayDeque<>();
    private GuideCanvas canvas;
    private Action back;
    private String path;
    private GuideText page;

    @Override
    public void createPartControl(Composite parent) {
        canvas = new GuideCanvas(parent);
        StyledText text = canvas.widget();
        text.addListener(SWT.MouseUp, this::clicked);
        text.addVerifyKeyListener(e -> e.doit = !key(e.keyCode, e.stateMask & SWT.MODIFIER_MASK));
        text.addListener(SWT.Traverse, e -> e.doit = e.detail != SWT.TRAVERSE_TAB_NEXT);
        back = new Action("Back") {
            @Override
            public void run() {
                open(before.pop());
            }
        };
        back.setToolTipText("Back to the page before (Backspace)");
        back.setImageDescriptor(
                PlatformUI.getWorkbench().getSharedImages().getImageDescriptor(ISharedImages.IMG_TOOL_BACK));
        getViewSite().getActionBars().getToolBarManager().add(back);
        open(GuideSource.INDEX);
    }

    @Override
    public void setFocus() {
        canvas.widget().setFocus();
    }

    @Override
    public <T> T getAdapter(Class<T> type) {
        T beside = BesideEditor.adapter(type, getSite().getPage());
        return beside != null ? beside : super.getAdapter(type);
    }

    private void open(String newPath) {
        path = newPath;
        page = GuideWriter.write(source.page(newPath).orElse("This page of the user guide is not installed: " + newPath));
        canvas.show(page, this::picture);
        back.setEnabled(!before.isEmpty());
    }

    private Image picture(String link) {
        return source.open(GuideSource.resolve(path, link), this::image).orElse(null);
    }

    private Image image(InputStream in) throws IOException {
        try {
            return new Image(canvas.widget().getDisplay(), in);
        } catch (SWTException notAPicture) {
            throw new IOException(notAPicture);
        }
    }

    private void clicked(Event e) {
        int offset = canvas.widget().getOffsetAtPoint(new Point(e.x, e.y));
        if (e.button == 1 && offset >= 0 && canvas.widget().getSelectionCount() == 0) {
            page.link(offset).ifPresent(this::follow);
        }
    }

    private boolean key(int key, int modifiers) {
        StyledText text = canvas.widget();
        if (key == SWT.TAB && modifiers == 0) {
            Optional<Span> next = page.linkAfter(text.getSelection().x);
            next.ifPresent(link -> text.setSelection(link.start(), link.end()));
            return next.isPresent();
        }
        if (key == SWT.CR || key == SWT.KEYPAD_CR) {
            page.link(text.getSelection().x).ifPresent(this::follow);
            return true;
        }
        if (key == SWT.BS && !before.isEmpty()) {
            back.run();
            return true;
        }
        return false;
    }

    private void follow(Span link) {
        String goal = link.goal();
        if (goal.matches("[a-z]+:.*")) {
            Program.launch(goal);
            return;
        }
        if (!goal.startsWith("#")) {
            before.push(path);
            open(GuideSource.resolve(path, goal));
        }
        Integer anchor = goal.contains("#") ? page.anchors().get(goal.substring(goal.indexOf('#') + 1)) : null;
        if (anchor != null) {
            canvas.widget().setSelection(anchor);
            canvas.widget().setTopIndex(canvas.widget().getLineAtOffset(anchor));
        }
    }
}
