// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

/**
 * Draws dimensions. After ISO 129-1 the number stands above its line and reads along it; after ASME Y14.5 it stands in a
 * gap of its line and always reads to the right (both from memory).
 */
final class Dimensions {
    /** From one dimension line to the next, and to the outline. */
    static final double STEP = 7;
    private static final double ARROW = 2.5;
    private static final double ARROW_HALF = 0.4;
    /** Between outline and extension line. */
    private static final double GAP = 0.8;
    /** How far an extension line goes on beyond the dimension line. */
    private static final double BEYOND = 1.5;
    /** Between a number and its line. */
    private static final double CLEAR = 1.3;
    private static final double SIDE = 1.2;

    private final Pencil pencil;
    private final Convention convention;

    Dimensions(Pencil pencil, Convention convention) {
        this.pencil = pencil;
        this.convention = convention;
    }

    /**
     * A dimension along x.
     *
     * @param left where it begins
     * @param right where it ends
     * @param leftFrom the y of the feature at its left end, where the extension line begins
     * @param rightFrom the same at its right end
     * @param y the dimension line
     */
    void along(double left, double right, double leftFrom, double rightFrom, double y, String text) {
        along(left, right, leftFrom, rightFrom, y, text, right);
    }

    /**
     * The same.
     *
     * @param clear where the number may begin if it has to stand to the right of its dimension
     */
    void along(double left, double right, double leftFrom, double rightFrom, double y, String text, double clear) {
        extend(left, leftFrom, y);
        extend(right, rightFrom, y);
        double width = pencil.width(text, Pencil.TEXT);
        if (right - left >= needed(width)) {
            inside(left, right, y, text, width);
        } else {
            outside(left, right, y, text, Math.max(right + 2 * ARROW, clear + SIDE));
        }
    }

    /** A number beside its line needs no room between the arrows, one in its line does. */
    private double needed(double length) {
        return convention == Convention.ISO ? Math.max(length + 1, 2 * ARROW + 1) : length + 2 * ARROW + 2 * SIDE;
    }

    private void inside(double left, double right, double y, String text, double width) {
        double middle = (left + right) / 2;
        arrow(left, y, -1);
        arrow(right, y, 1);
        if (convention == Convention.ISO) {
            pencil.line(Pen.THIN, left, y, right, y);
            pencil.text(text, middle, y + CLEAR, Pencil.TEXT, Anchor.MIDDLE);
        } else {
            pencil.line(Pen.THIN, left, y, middle - width / 2 - SIDE, y);
            pencil.line(Pen.THIN, middle + width / 2 + SIDE, y, right, y);
            pencil.text(text, middle, y - Pencil.TEXT / 2, Pencil.TEXT, Anchor.MIDDLE);
        }
    }

    /** Too narrow for the number: arrows from outside, and the number to the right of them. */
    private void outside(double left, double right, double y, String text, double start) {
        arrow(left, y, 1);
        arrow(right, y, -1);
        pencil.line(Pen.THIN, left - 2 * ARROW, y, left, y);
        if (convention == Convention.ISO) {
            pencil.line(Pen.THIN, right, y, start + pencil.width(text, Pencil.TEXT) + SIDE, y);
            pencil.text(text, start, y + CLEAR, Pencil.TEXT, Anchor.START);
        } else {
            pencil.line(Pen.THIN, right, y, start, y);
            pencil.text(text, start + SIDE, y - Pencil.TEXT / 2, Pencil.TEXT, Anchor.START);
        }
    }

    private void extend(double x, double from, double y) {
        double up = Math.signum(y - from);
        pencil.line(Pen.THIN, x, from + up * GAP, x, y + up * BEYOND);
    }

    /** An arrow head with its point at x, pointing to the right for 1, to the left for −1. */
    void arrow(double x, double y, int right) {
        pencil.area(new Point(x, y), new Point(x - right * ARROW, y + ARROW_HALF), new Point(x - right * ARROW, y - ARROW_HALF));
    }

    private void arrowUp(double x, double y, int up) {
        pencil.area(new Point(x, y), new Point(x + ARROW_HALF, y - up * ARROW), new Point(x - ARROW_HALF, y - up * ARROW));
    }

    /**
     * A dimension along y.
     *
     * @param bottomFrom the x of the feature at the bottom, where the extension line begins
     * @param topFrom the same at the top
     * @param x the dimension line
     */
    void upright(double bottom, double top, double bottomFrom, double topFrom, double x, String text) {
        extendSideways(bottomFrom, x, bottom);
        extendSideways(topFrom, x, top);
        double length = convention == Convention.ISO ? pencil.width(text, Pencil.TEXT) : Pencil.TEXT;
        boolean inside = top - bottom >= needed(length);
        arrowUp(x, bottom, inside ? -1 : 1);
        arrowUp(x, top, inside ? 1 : -1);
        double middle = (bottom + top) / 2;
        if (!inside) {
            above(bottom, top, x, text, length);
        } else if (convention == Convention.ISO) {
            pencil.line(Pen.THIN, x, bottom, x, top);
            pencil.text(text, x - CLEAR, middle, Pencil.TEXT, Anchor.MIDDLE, true);
        } else {
            pencil.line(Pen.THIN, x, bottom, x, middle - length / 2 - SIDE);
            pencil.line(Pen.THIN, x, middle + length / 2 + SIDE, x, top);
            pencil.text(text, x, middle - Pencil.TEXT / 2, Pencil.TEXT, Anchor.MIDDLE);
        }
    }

    private void above(double bottom, double top, double x, String text, double length) {
        pencil.line(Pen.THIN, x, bottom - 2 * ARROW, x, bottom);
        double start = top + 2 * ARROW;
        if (convention == Convention.ISO) {
            pencil.line(Pen.THIN, x, top, x, start + length);
            pencil.text(text, x - CLEAR, start, Pencil.TEXT, Anchor.START, true);
        } else {
            pencil.line(Pen.THIN, x, top, x, start);
            pencil.text(text, x, start + SIDE, Pencil.TEXT, Anchor.MIDDLE);
        }
    }

    private void extendSideways(double from, double x, double y) {
        double right = Math.signum(x - from);
        pencil.line(Pen.THIN, from + right * GAP, y, x + right * BEYOND, y);
    }
}
