// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

/** A bar of 100 mm to be measured on the print: printers like to fit a page to their paper. */
final class CheckBar {
    /** The name of its part. */
    static final String NAME = "check-bar";
    /** What it must measure. */
    static final double LENGTH = 100;
    private static final double FIELD = 20;
    private static final double HEIGHT = 2.5;

    private CheckBar() {
    }

    static Part of(Style style) {
        Pencil pencil = style.pencil();
        for (int i = 0; i < LENGTH / FIELD; i += 2) {
            pencil.area(new Point(i * FIELD, 0), new Point((i + 1) * FIELD, 0), new Point((i + 1) * FIELD, HEIGHT),
                    new Point(i * FIELD, HEIGHT));
        }
        // Both ends are black, since DXF lines have no width; the outline of the white fields is drawn inwards.
        double half = Pen.THIN.widthMm() / 2;
        pencil.box(Pen.THIN, new Box(0, 0, LENGTH, HEIGHT).inset(half));
        pencil.text("100 mm: measure this bar on the print", 0, HEIGHT + 1.5, Pencil.TEXT, Anchor.START);
        return pencil.part(NAME);
    }
}
