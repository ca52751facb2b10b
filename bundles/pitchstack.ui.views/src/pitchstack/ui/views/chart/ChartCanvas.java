// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.chart;

import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.graphics.TextLayout;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import pitchstack.export.plot.Picture;
import pitchstack.export.plot.Plot;
import pitchstack.export.plot.PlotLook;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.Background;
import pitchstack.ui.views.coverage.Ink;

/**
 * A chart on the screen. It is drawn in the background for the size, the colours and the pixels of the screen as they
 * are, and until that is done the one before stays; while values run past, as many are drawn as there is time for.
 */
public final class ChartCanvas {
    private final Canvas canvas;
    private final Background background;
    private Plot wanted;
    private Drawn drawn;
    private boolean drawing;
    private String instead = "";

    /** What was drawn of what, for which look. */
    private record Drawn(Plot plot, PlotLook look, Image image) { }

    /**
     * @param parent where it stands
     * @param name what the chart is called by those who cannot see it, such as “Preload against bearing flanks”
     */
    public ChartCanvas(Composite parent, String name) {
        canvas = new Canvas(parent, SWT.DOUBLE_BUFFERED);
        canvas.setBackground(new Ink(canvas.getDisplay()).ground());
        background = new Background(canvas.getDisplay(), share -> { });
        canvas.addListener(SWT.Paint, this::paint);
        canvas.addListener(SWT.Resize, e -> canvas.redraw());
        canvas.addListener(SWT.FocusIn, e -> canvas.redraw());
        canvas.addListener(SWT.FocusOut, e -> canvas.redraw());
        canvas.addListener(SWT.Traverse, e -> e.doit = true);
        canvas.addListener(SWT.Dispose, e -> dispose());
        new ChartHands(canvas, () -> Optional.ofNullable(wanted));
        Accessibles.name(canvas, name);
        describe();
    }

    private void describe() {
        canvas.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getDescription(AccessibleEvent e) {
                e.result = description();
            }
        });
        canvas.getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent e) {
                e.detail = ACC.ROLE_GRAPHIC;
            }
        });
    }

    /** The canvas, to be laid out. */
    public Control control() {
        return canvas;
    }

    /** What the chart shows, in words. */
    public String description() {
        return wanted == null ? instead : wanted.description();
    }

    /** Shows a plot. */
    public void show(Plot plot) {
        wanted = plot;
        instead = "";
        canvas.redraw();
    }

    /** Shows no plot, and says why. */
    public void say(String sentence) {
        wanted = null;
        instead = sentence;
        // What comes next has nothing to do with this picture, and may take a while.
        disposeImage();
        canvas.redraw();
    }

    /** Whether what is on the screen is what was last given to {@link #show}. */
    public boolean isUpToDate() {
        return wanted == null || drawn != null && drawn.plot() == wanted && drawn.look().equals(look().orElse(null));
    }

    private Optional<PlotLook> look() {
        return ChartLook.of(canvas);
    }

    private void paint(Event e) {
        Rectangle area = canvas.getClientArea();
        if (wanted == null) {
            e.gc.setForeground(new Ink(canvas.getDisplay()).text());
            words(e.gc, area.width);
        } else {
            // The one before of another size would stand in a corner.
            if (drawn != null && drawn.look().width() == area.width && drawn.look().height() == area.height) {
                e.gc.drawImage(drawn.image(), 0, 0);
            }
            if (!isUpToDate()) {
                begin();
            }
        }
        if (canvas.isFocusControl()) {
            e.gc.drawFocus(area.x, area.y, area.width, area.height);
        }
    }

    /** What is said instead of a chart, wrapped. */
    private void words(GC gc, int width) {
        TextLayout words = new TextLayout(canvas.getDisplay());
        words.setFont(canvas.getFont());
        words.setText(instead);
        words.setWidth(Math.max(1, width));
        words.draw(gc, 0, 0);
        words.dispose();
    }

    /** Begins to draw what is wanted; what is being drawn goes first, or nothing would ever be seen. */
    private void begin() {
        Optional<PlotLook> look = look();
        if (drawing || look.isEmpty()) {
            return;
        }
        drawing = true;
        Plot plot = wanted;
        background.ask("Drawing a chart", progress -> plot.draw(look.get()), picture -> drawn(plot, look.get(),
                picture));
    }

    private void drawn(Plot plot, PlotLook look, Optional<Picture> picture) {
        drawing = false;
        if (canvas.isDisposed()) {
            return;
        }
        if (picture.isEmpty()) {
            say("The chart could not be drawn; the log says why. The numbers stand beside it.");
            return;
        }
        disposeImage();
        drawn = new Drawn(plot, look, ChartLook.image(canvas, picture.get(), look, plot));
        canvas.redraw();
    }

    private void disposeImage() {
        if (drawn != null) {
            drawn.image().dispose();
            drawn = null;
        }
    }

    private void dispose() {
        background.forget();
        disposeImage();
    }
}
