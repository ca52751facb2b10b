// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.card;

import java.util.List;
import pitchstack.core.units.Scale;
import pitchstack.core.units.TrueMinus;
import pitchstack.export.drawing.Anchor;
import pitchstack.export.drawing.Part;
import pitchstack.export.drawing.Pen;
import pitchstack.export.drawing.Pencil;
import pitchstack.export.drawing.TextLines;
import pitchstack.export.drawing.TextMeasure;

/** A pocket table as a part of a sheet. */
final class PocketPart {
    private static final double HEADING = 3.5;
    private static final double PAD = 1.5;
    private static final double FIRST = 14;

    private final PocketTable table;
    private final Scale scale;
    private final TextMeasure measure;
    private final double width;
    private final double column;
    private final Pencil pencil;

    private PocketPart(PocketTable table, Scale scale, TextMeasure measure, double width) {
        this.table = table;
        this.scale = scale;
        this.measure = measure;
        this.width = width;
        column = (width - FIRST) / table.columns().size();
        pencil = new Pencil(measure);
    }

    static Part of(String name, PocketTable table, Scale scale, TextMeasure measure, double width) {
        return new PocketPart(table, scale, measure, width).part(name);
    }

    private Part part(String name) {
        pencil.text(TextLines.cut(table.title(), HEADING, width, measure), 0, -HEADING, HEADING, Anchor.START);
        double y = head(-HEADING - 2 * PAD);
        for (PocketTable.Row row : table.rows()) {
            y -= PAD + Pencil.TEXT;
            pencil.text(String.valueOf(row.count()), FIRST - 2 * PAD, y, Pencil.TEXT, Anchor.END);
            for (int i = 0; i < row.travel().size(); i++) {
                if (row.travel().get(i) != null) {
                    number(TrueMinus.in(scale.format(row.travel().get(i))), FIRST + (i + 1) * column - PAD, y);
                }
            }
            y -= PAD;
            pencil.line(Pen.THIN, 0, y, width, y);
        }
        return pencil.part(name);
    }

    private double head(double top) {
        List<String> columns = table.columns();
        double lowest = base(top, "Teeth", FIRST - 2 * PAD, FIRST);
        for (int i = 0; i < columns.size(); i++) {
            lowest = Math.min(lowest, base(top, columns.get(i), FIRST + (i + 1) * column - PAD, column));
        }
        pencil.line(Pen.OUTLINE, 0, lowest, width, lowest);
        return lowest;
    }

    /** Writes a heading over numbers that end at its right; the result is where its column may be ruled off. */
    private double base(double top, String text, double right, double room) {
        double y = top - Pencil.TEXT;
        for (String line : TextLines.wrapped(text, Pencil.TEXT, room - PAD, measure)) {
            pencil.text(line, right, y, Pencil.TEXT, Anchor.END);
            y -= Pencil.TEXT * Pencil.LINE_PITCH;
        }
        return y + Pencil.TEXT * (Pencil.LINE_PITCH - 1) - PAD;
    }

    private void number(String number, double right, double y) {
        double room = column - PAD;
        double height = Math.min(Pencil.TEXT, Pencil.TEXT * room / measure.widthMm(number, Pencil.TEXT));
        pencil.text(number, right, y, height, Anchor.END);
    }
}
