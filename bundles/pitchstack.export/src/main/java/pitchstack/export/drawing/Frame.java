// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.util.List;
import java.util.TreeSet;

/** The border of a sheet after ISO 5457: frame, centring marks, and the fields by which a place is found. */
final class Frame {
    /** Fields count from the centring marks and are so long (ISO 5457:1999, from memory). */
    private static final double FIELD = 50;
    private static final double STRIP = 5;
    private static final double CENTRING = 5;
    /** Without I and O, which look like 1 and 0. */
    private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";

    private final SheetSize sheet;
    private final Box space;
    private final Pencil pencil;

    private Frame(SheetSize sheet, Style style) {
        this.sheet = sheet;
        space = sheet.drawingSpace();
        pencil = style.pencil();
    }

    static Part of(SheetSize sheet, Style style) {
        return new Frame(sheet, style).draw();
    }

    private Part draw() {
        pencil.box(Pen.HATCH, new Box(0, 0, sheet.widthMm(), sheet.heightMm()));
        pencil.box(Pen.FRAME, space);
        pencil.box(Pen.THIN, space.inset(-STRIP));
        double middleX = sheet.widthMm() / 2;
        double middleY = sheet.heightMm() / 2;
        pencil.line(Pen.FRAME, middleX, 0, middleX, space.bottom() + CENTRING);
        pencil.line(Pen.FRAME, middleX, sheet.heightMm(), middleX, space.top() - CENTRING);
        pencil.line(Pen.FRAME, 0, middleY, space.left() + CENTRING, middleY);
        pencil.line(Pen.FRAME, sheet.widthMm(), middleY, space.right() - CENTRING, middleY);
        numbers();
        letters();
        return new Part("frame", new Box(0, 0, sheet.widthMm(), sheet.heightMm()), pencil.marks());
    }

    private void numbers() {
        List<Double> edges = edges(sheet.widthMm() / 2, space.left(), space.right());
        for (int i = 0; i + 1 < edges.size(); i++) {
            double middle = (edges.get(i) + edges.get(i + 1)) / 2;
            if (i > 0) {
                pencil.line(Pen.THIN, edges.get(i), space.bottom() - STRIP, edges.get(i), space.bottom());
                pencil.line(Pen.THIN, edges.get(i), space.top(), edges.get(i), space.top() + STRIP);
            }
            pencil.text(String.valueOf(i + 1), middle, space.top() + 1.25, Pencil.TEXT, Anchor.MIDDLE);
            pencil.text(String.valueOf(i + 1), middle, space.bottom() - STRIP + 1.25, Pencil.TEXT, Anchor.MIDDLE);
        }
    }

    private void letters() {
        List<Double> edges = edges(sheet.heightMm() / 2, space.bottom(), space.top());
        int fields = edges.size() - 1;
        for (int i = 0; i < fields; i++) {
            double middle = (edges.get(i) + edges.get(i + 1)) / 2;
            if (i > 0) {
                pencil.line(Pen.THIN, space.left() - STRIP, edges.get(i), space.left(), edges.get(i));
                pencil.line(Pen.THIN, space.right(), edges.get(i), space.right() + STRIP, edges.get(i));
            }
            String letter = LETTERS.substring(fields - 1 - i, fields - i);
            pencil.text(letter, space.left() - STRIP / 2, middle - Pencil.TEXT / 2, Pencil.TEXT, Anchor.MIDDLE);
            pencil.text(letter, space.right() + STRIP / 2, middle - Pencil.TEXT / 2, Pencil.TEXT, Anchor.MIDDLE);
        }
    }

    /** Where fields begin and end, from a centring mark outwards; what is left over at an end belongs to the last field. */
    private static List<Double> edges(double centre, double from, double to) {
        TreeSet<Double> edges = new TreeSet<>();
        for (double edge = centre; edge > from + FIELD / 2; edge -= FIELD) {
            edges.add(edge);
        }
        for (double edge = centre; edge < to - FIELD / 2; edge += FIELD) {
            edges.add(edge);
        }
        edges.add(from);
        edges.add(to);
        return List.copyOf(edges);
    }
}
