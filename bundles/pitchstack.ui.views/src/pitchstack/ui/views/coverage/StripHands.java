// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.coverage;

import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Canvas;
import pitchstack.ui.views.coverage.strip.Spot;

/** Chooses a position on the strip by a click, and looks about on it. */
final class StripHands {
    private final StripCanvas strip;
    private final Consumer<Spot> chosen;
    private final LookHands look;
    private final Canvas canvas;
    private final Runnable choose = this::choose;
    private Spot clicked;

    /** @param chosen called with a position that is clicked, once it is known that no second click follows */
    StripHands(StripCanvas strip, Consumer<Spot> chosen) {
        this.strip = strip;
        this.chosen = chosen;
        canvas = strip.control();
        canvas.addListener(SWT.MouseDown, e -> forget());
        canvas.addListener(SWT.MouseDoubleClick, e -> forget());
        look = new LookHands(strip, this::click);
        canvas.addListener(SWT.Dispose, e -> forget());
    }

    /** Looks closer about a place of the canvas, in pixels from its left edge, or with a factor below 1 from farther off. */
    void zoom(double factor, int x) {
        forget();
        look.zoom(factor, x);
    }

    /** Shows the whole travel. */
    void all() {
        forget();
        look.all();
    }

    private void forget() {
        clicked = null;
        canvas.getDisplay().timerExec(-1, choose);
    }

    private void click(int x) {
        clicked = strip.spot(x).orElse(null);
        canvas.getDisplay().timerExec(canvas.getDisplay().getDoubleClickTime(), choose);
    }

    private void choose() {
        if (clicked != null) {
            chosen.accept(clicked);
            clicked = null;
        }
    }
}
