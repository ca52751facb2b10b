// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.util.List;

/** The title block: the fields of ISO 7200, 180 mm wide at the lower right corner (ISO 5457). */
final class TitleBlockPart {
    /** Its width. */
    static final double WIDTH = 180;
    private static final double ROW = 9;
    private static final double PAD = 1.2;

    private final Pencil pencil;
    private final TextMeasure measure;

    private TitleBlockPart(Style style) {
        pencil = style.pencil();
        measure = style.measure();
    }

    static Part of(TitleFields fields, SheetSize sheet, Projection projection, Style style) {
        TitleBlockPart part = new TitleBlockPart(style);
        part.draw(fields, sheet, projection);
        return part.pencil.part("title-block");
    }

    private void draw(TitleFields fields, SheetSize sheet, Projection projection) {
        field("Created by", fields.creator(), 0, 3, 44, 1);
        field("Approved by", fields.approver(), 44, 3, 44, 1);
        field("Document type", TitleFields.DOCUMENT_TYPE, 88, 3, 36, 1);
        field("Scale", fields.scale(), 124, 3, 18, 1);
        field("Unit", fields.unit(), 142, 3, 12, 1);
        box(154, 3, 26, 1);
        projection.draw(pencil, 167, 3.5 * ROW);
        field("Legal owner", fields.owner(), 0, 0, 50, 3);
        title(fields);
        field("Identification number", fields.number(), 126, 1, 54, 2);
        field("Rev.", fields.revision(), 126, 0, 9, 1);
        field("Date of issue", fields.issued(), 135, 0, 21, 1);
        field("Lang.", TitleFields.LANGUAGE, 156, 0, 8, 1);
        field("Sheet, " + sheet, "1/1", 164, 0, 16, 1);
        pencil.box(Pen.OUTLINE, new Box(0, 0, WIDTH, 4 * ROW));
    }

    private void title(TitleFields fields) {
        box(50, 0, 76, 3);
        heading("Title, supplementary title", 50, 3);
        double y = lines(fields.title(), 50, 3 * ROW - PAD - Pencil.SMALL - 1.5, 76, Pencil.HEADING, 2);
        lines(fields.supplement(), 50, y - 2, 76, Pencil.TEXT, 2);
    }

    /** A field of some rows from its lower left corner: what it is in small letters, what it says below. */
    private void field(String heading, String text, double x, int row, double width, int rows) {
        box(x, row, width, rows);
        heading(heading, x, row + rows);
        double top = (row + rows) * ROW - PAD - Pencil.SMALL - 1;
        boolean roomy = rows > 1;
        double height = roomy && measure.widthMm(measure.printable(text), Pencil.HEADING) <= width - 2 * PAD
                ? Pencil.HEADING : Pencil.TEXT;
        lines(text, x, top - (roomy ? 1 : 0), width, height, roomy ? rows : 1);
    }

    private void box(double x, int row, double width, int rows) {
        pencil.box(Pen.THIN, Box.at(x, row * ROW, width, rows * ROW));
    }

    private void heading(String heading, double x, int top) {
        pencil.text(heading, x + PAD, top * ROW - PAD - Pencil.SMALL + 0.3, Pencil.SMALL, Anchor.START);
    }

    /** Writes lines from a height down; a text that needs smaller letters gets them, and what even then is too long is cut. */
    private double lines(String text, double x, double top, double width, double height, int most) {
        double room = width - 2 * PAD;
        double letters = TextLines.wrapped(text, height, room, measure).size() <= most ? height
                : most == 1 ? Pencil.SMALL : Math.min(height, Pencil.TEXT);
        List<String> wrapped = TextLines.wrapped(text, letters, room, measure);
        double y = top - letters;
        for (int i = 0; i < Math.min(most, wrapped.size()); i++) {
            boolean isLast = i == most - 1 && wrapped.size() > most;
            pencil.text(isLast ? TextLines.cut(wrapped.get(i) + ' ' + wrapped.get(i + 1), letters, room, measure)
                    : wrapped.get(i), x + PAD, y, letters, Anchor.START);
            y -= letters * Pencil.LINE_PITCH;
        }
        return y + letters * Pencil.LINE_PITCH;
    }
}
