// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.coverage;

import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Event;
import pitchstack.ui.views.coverage.strip.Sight;
import pitchstack.ui.views.coverage.strip.Spot;

/** What mouse and keys do on the strip: look closer, look elsewhere, and choose a position. */
final class StripHands {
    private static final double WHEEL_FACTOR = 1.25;
    private static final double KEY_FACTOR = 1.5;
    private static final double KEY_PAN_PART = 0.1;
    /** A hand shakes so many pixels while it clicks. */
    private static final int SHAKE_PX = 3;
    private static final int NOWHERE = Integer.MIN_VALUE;

    private final StripCanvas strip;
    private final Consumer<Spot> chosen;
    private final Canvas canvas;
    private final Runnable choose = this::choose;
    private Spot clicked;
    private int pressed = NOWHERE;
    private boolean dragging;
    private Sight before;

    /** @param chosen called with a position that is clicked, once it is known that no second click follows */
    StripHands(StripCanvas strip, Consumer<Spot> chosen) {
        this.strip = strip;
        this.chosen = chosen;
        canvas = strip.control();
        canvas.addListener(SWT.MouseWheel, this::wheel);
        canvas.addListener(SWT.MouseDown, this::press);
        canvas.addListener(SWT.MouseMove, this::drag);
        canvas.addListener(SWT.MouseUp, this::release);
        canvas.addListener(SWT.MouseDoubleClick, e -> all());
        canvas.addListener(SWT.KeyDown, this::key);
        canvas.addListener(SWT.Traverse, e -> e.doit = e.detail == SWT.TRAVERSE_TAB_NEXT
                || e.detail == SWT.TRAVERSE_TAB_PREVIOUS || e.detail == SWT.TRAVERSE_PAGE_NEXT
                || e.detail == SWT.TRAVERSE_PAGE_PREVIOUS);
        canvas.addListener(SWT.Dispose, e -> forget());
    }

    /** Shows the whole travel. */
    void all() {
        forget();
        strip.look(Sight::all);
    }

    private void forget() {
        clicked = null;
        canvas.getDisplay().timerExec(-1, choose);
    }

    private void wheel(Event e) {
        int x = strip.onStrip(e.x);
        strip.look(sight -> sight.zoom(Math.pow(WHEEL_FACTOR, Integer.signum(e.count)), sight.position(x, strip.width())));
        e.doit = false;
    }

    private void press(Event e) {
        canvas.forceFocus();
        forget();
        if (e.button == 1) {
            pressed = e.x;
            dragging = false;
            strip.chart().ifPresent(chart -> before = chart.sight());
        }
    }

    private void drag(Event e) {
        if (pressed == NOWHERE || strip.chart().isEmpty()) {
            return;
        }
        dragging |= Math.abs(e.x - pressed) > SHAKE_PX;
        if (dragging) {
            canvas.setCursor(canvas.getDisplay().getSystemCursor(SWT.CURSOR_SIZEWE));
            strip.look(sight -> before.pan((pressed - e.x) * before.size() / strip.width()));
        }
    }

    private void release(Event e) {
        if (e.button != 1 || pressed == NOWHERE) {
            return;
        }
        boolean click = !dragging;
        pressed = NOWHERE;
        dragging = false;
        canvas.setCursor(null);
        if (click && e.count < 2) {
            clicked = strip.spot(e.x).orElse(null);
            canvas.getDisplay().timerExec(canvas.getDisplay().getDoubleClickTime(), choose);
        }
    }

    private void choose() {
        if (clicked != null) {
            chosen.accept(clicked);
            clicked = null;
        }
    }

    private void key(Event e) {
        if ((e.stateMask & (SWT.CTRL | SWT.ALT | SWT.COMMAND)) != 0) {
            return;
        }
        switch (e.keyCode) {
            case SWT.ARROW_LEFT -> strip.look(sight -> sight.pan(-sight.size() * KEY_PAN_PART));
            case SWT.ARROW_RIGHT -> strip.look(sight -> sight.pan(sight.size() * KEY_PAN_PART));
            case SWT.KEYPAD_ADD -> zoom(KEY_FACTOR);
            case SWT.KEYPAD_SUBTRACT -> zoom(1 / KEY_FACTOR);
            case SWT.KEYPAD_0 -> all();
            default -> character(e.character);
        }
    }

    private void character(char character) {
        switch (character) {
            case '+', '=' -> zoom(KEY_FACTOR);
            case '-' -> zoom(1 / KEY_FACTOR);
            case '0' -> all();
            default -> { }
        }
    }

    /** About the carriage where it is in sight, or else about the middle. */
    private void zoom(double factor) {
        strip.chart().ifPresent(chart -> {
            Sight sight = chart.sight();
            boolean seen = chart.carriage() >= sight.from() && chart.carriage() <= sight.to();
            double fixed = seen ? chart.carriage() : sight.from() + sight.size() / 2;
            strip.look(s -> s.zoom(factor, fixed));
        });
    }
}
