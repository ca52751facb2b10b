// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.wear;

import java.util.Objects;
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
import pitchstack.ui.views.coverage.Ink;
import pitchstack.ui.views.coverage.LookHands;
import pitchstack.ui.views.coverage.Looked;
import pitchstack.ui.views.coverage.strip.Sight;

/** The seatings of a row on the screen; wheel, drag and keys look closer and elsewhere as on the strip of the travel. */
final class BarCanvas implements Looked {
    private final Canvas canvas;
    private Bars bars;

    BarCanvas(Composite parent) {
        canvas = new Canvas(parent, SWT.DOUBLE_BUFFERED | SWT.BORDER);
        Colours.follow(canvas, () -> canvas.setBackground(new Ink(canvas.getDisplay()).ground()));
        canvas.addListener(SWT.Paint, this::paint);
        canvas.addListener(SWT.FocusIn, e -> canvas.redraw());
        canvas.addListener(SWT.FocusOut, e -> canvas.redraw());
        canvas.addListener(SWT.MouseMove, e -> tell(e.x));
        new LookHands(this, x -> { });
        Accessibles.name(canvas, () -> bars == null ? "Seatings by tooth" : bars.title());
    }

    /** Shows bars, or nothing for {@code null}; the same row stays at the same zoom. */
    void show(Bars shown, boolean sameRow) {
        bars = sameRow && bars != null && shown != null ? shown.look(bars.sight().on(shown.sight())) : shown;
        canvas.redraw();
    }

    private void tell(int x) {
        // Where the title is too long it is cut.
        String tip = bars == null ? null : bars.title();
        if (bars != null && onChart(x) >= 0 && onChart(x) < width()) {
            int tooth = (int) Math.floor(bars.sight().position(onChart(x), width()));
            if (tooth >= 0 && tooth < bars.counts().length) {
                long count = (long) bars.counts()[tooth] * bars.times();
                tip = "Tooth " + tooth + ": " + count + (count == 1 ? " seating" : " seatings");
            }
        }
        if (!Objects.equals(tip, canvas.getToolTipText())) {
            canvas.setToolTipText(tip);
        }
    }

    @Override
    public Canvas control() {
        return canvas;
    }

    @Override
    public Optional<Sight> sight() {
        return Optional.ofNullable(bars).map(Bars::sight);
    }

    @Override
    public void look(UnaryOperator<Sight> at) {
        if (bars != null) {
            bars = bars.look(at.apply(bars.sight()));
            canvas.redraw();
        }
    }

    @Override
    public int onChart(int x) {
        return x - plot().x;
    }

    @Override
    public int width() {
        return plot().width;
    }

    @Override
    public OptionalDouble interest() {
        return bars == null ? OptionalDouble.empty() : OptionalDouble.of(bars.mostUsed() + 0.5);
    }

    private Rectangle plot() {
        GC gc = new GC(canvas);
        int text = gc.getFontMetrics().getHeight();
        gc.dispose();
        return BarPainter.bars(canvas.getClientArea(), text);
    }

    private void paint(Event e) {
        Rectangle area = canvas.getClientArea();
        if (bars != null && area.width > 2 * BarPainter.left(e.gc.getFontMetrics().getHeight())) {
            new BarPainter(new Ink(canvas.getDisplay())).paint(e.gc, bars, area);
        }
        if (canvas.isFocusControl()) {
            e.gc.drawFocus(area.x, area.y, area.width, area.height);
        }
    }
}
