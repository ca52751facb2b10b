// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.coverage;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.Colours;
import pitchstack.ui.views.coverage.strip.Sight;
import pitchstack.ui.views.coverage.strip.Spot;

/** The strip chart on the screen. */
final class StripCanvas implements Looked {
    private final Canvas canvas;
    private Chart chart;

    StripCanvas(Composite parent) {
        canvas = new Canvas(parent, SWT.DOUBLE_BUFFERED | SWT.BORDER);
        Colours.follow(canvas, () -> canvas.setBackground(new Ink(canvas.getDisplay()).ground()));
        canvas.addListener(SWT.Paint, this::paint);
        canvas.addListener(SWT.FocusIn, e -> canvas.redraw());
        canvas.addListener(SWT.FocusOut, e -> canvas.redraw());
        Accessibles.name(canvas, () -> "Coverage of the travel" + (chart == null ? ""
                : ", from " + chart.scale().format(chart.shares().lowest()) + " to "
                        + chart.scale().format(chart.shares().highest())));
    }

    @Override
    public Canvas control() {
        return canvas;
    }

    /** What is shown, if anything is. */
    Optional<Chart> chart() {
        return Optional.ofNullable(chart);
    }

    /** Shows a chart, or nothing for {@code null}. */
    void show(Chart shown) {
        chart = shown;
        canvas.redraw();
    }

    @Override
    public Optional<Sight> sight() {
        return chart().map(Chart::sight);
    }

    @Override
    public OptionalDouble interest() {
        return chart == null ? OptionalDouble.empty() : OptionalDouble.of(chart.carriage());
    }

    @Override
    public void look(UnaryOperator<Sight> at) {
        if (chart != null) {
            show(chart.look(at.apply(chart.sight())));
        }
    }

    @Override
    public int width() {
        return strip().width;
    }

    @Override
    public int onChart(int x) {
        return x - strip().x;
    }

    /** The position at a place on the canvas; empty beside the strip, or while nothing is shown. */
    Optional<Spot> spot(int x) {
        int at = onChart(x);
        // A pixel or two beside the ends is meant for them.
        boolean near = at >= -StripPainter.SIDE_PX / 2 && at <= width() + StripPainter.SIDE_PX / 2;
        return chart == null || !near ? Optional.empty()
                : Optional.of(Spot.at(chart.scale(), chart.sight(), at + 0.5, width()));
    }

    private Rectangle strip() {
        GC gc = new GC(canvas);
        int text = gc.getFontMetrics().getHeight();
        gc.dispose();
        return StripPainter.strip(canvas.getClientArea(), text);
    }

    private void paint(Event e) {
        Rectangle area = canvas.getClientArea();
        if (chart != null && area.width > 2 * StripPainter.SIDE_PX && area.height > 0) {
            new StripPainter(new Ink(canvas.getDisplay())).paint(e.gc, chart, area);
        }
        if (canvas.isFocusControl()) {
            e.gc.drawFocus(area.x, area.y, area.width, area.height);
        }
    }
}
