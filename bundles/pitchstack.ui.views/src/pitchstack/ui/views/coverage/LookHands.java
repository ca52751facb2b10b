// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.coverage;

import java.util.function.IntConsumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Event;
import pitchstack.ui.views.coverage.strip.Sight;

/** What mouse and keys do on a chart along one line: look closer, look elsewhere, show all. */
public final class LookHands {
    private static final double WHEEL_FACTOR = 1.25;
    private static final double KEY_FACTOR = 1.5;
    private static final double KEY_PAN_PART = 0.1;
    /** A hand shakes so many pixels while it clicks. */
    private static final int SHAKE_PX = 3;
    private static final int NOWHERE = Integer.MIN_VALUE;

    private final Looked chart;
    private final Canvas canvas;
    private final IntConsumer clicked;
    private int pressed = NOWHERE;
    private boolean dragging;
    private Sight before;

    /**
     * @param chart what is looked at
     * @param clicked called with the place on the canvas, in pixels from its left edge, that is clicked and not dragged;
     *     not for the second click of two
     */
    public LookHands(Looked chart, IntConsumer clicked) {
        this.chart = chart;
        this.clicked = clicked;
        canvas = chart.control();
        canvas.addListener(SWT.MouseWheel, this::wheel);
        canvas.addListener(SWT.MouseDown, this::press);
        canvas.addListener(SWT.MouseMove, this::drag);
        canvas.addListener(SWT.MouseUp, this::release);
        canvas.addListener(SWT.MouseDoubleClick, e -> all());
        canvas.addListener(SWT.KeyDown, this::key);
        canvas.addListener(SWT.Traverse, e -> e.doit = e.detail == SWT.TRAVERSE_TAB_NEXT
                || e.detail == SWT.TRAVERSE_TAB_PREVIOUS || e.detail == SWT.TRAVERSE_PAGE_NEXT
                || e.detail == SWT.TRAVERSE_PAGE_PREVIOUS);
    }

    /** Shows all of it. */
    public void all() {
        chart.look(Sight::all);
    }

    /** Looks closer about a place of the canvas, in pixels from its left edge, or with a factor below 1 from farther off. */
    void zoom(double factor, int x) {
        chart.look(s -> s.zoom(factor, s.position(chart.onChart(x), chart.width())));
    }

    private void wheel(Event e) {
        zoom(Math.pow(WHEEL_FACTOR, Integer.signum(e.count)), e.x);
        e.doit = false;
    }

    private void press(Event e) {
        canvas.forceFocus();
        if (e.button == 1) {
            pressed = e.x;
            dragging = false;
            chart.sight().ifPresent(sight -> before = sight);
        }
    }

    private void drag(Event e) {
        if (pressed == NOWHERE || chart.sight().isEmpty()) {
            return;
        }
        dragging |= Math.abs(e.x - pressed) > SHAKE_PX;
        if (dragging) {
            canvas.setCursor(canvas.getDisplay().getSystemCursor(SWT.CURSOR_SIZEWE));
            chart.look(sight -> before.pan((pressed - e.x) * before.size() / chart.width()));
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
            clicked.accept(e.x);
        }
    }

    private void key(Event e) {
        if ((e.stateMask & (SWT.CTRL | SWT.ALT | SWT.COMMAND)) != 0) {
            return;
        }
        switch (e.keyCode) {
            case SWT.ARROW_LEFT -> chart.look(sight -> sight.pan(-sight.size() * KEY_PAN_PART));
            case SWT.ARROW_RIGHT -> chart.look(sight -> sight.pan(sight.size() * KEY_PAN_PART));
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

    /** About the place of interest where it is in sight, or else about the middle. */
    private void zoom(double factor) {
        chart.look(sight -> {
            double middle = sight.from() + sight.size() / 2;
            double fixed = chart.interest().orElse(middle);
            return sight.zoom(factor, fixed >= sight.from() && fixed <= sight.to() ? fixed : middle);
        });
    }
}
