// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.util.ArrayList;
import java.util.List;

/** A ruled table whose rows are as high as their text needs. */
final class Table {
    private static final double PAD = 1.2;

    private final double[] widths;
    private final Pencil pencil;
    private double y;

    private Table(double[] widths, Style style) {
        this.widths = widths;
        pencil = style.pencil();
    }

    /**
     * A table.
     *
     * @param name of the part
     * @param widths of the columns, mm
     * @param rows the cells, the head first
     */
    static Part of(String name, double[] widths, List<List<String>> rows, Style style) {
        Table table = new Table(widths, style);
        for (int i = 0; i < rows.size(); i++) {
            table.row(rows.get(i), i == 0);
        }
        return table.ruled(name);
    }

    private void row(List<String> cells, boolean isHead) {
        double height = isHead ? Pencil.SMALL : Pencil.TEXT;
        List<List<String>> lines = new ArrayList<>();
        for (int i = 0; i < widths.length; i++) {
            lines.add(TextLines.wrapped(cells.get(i), height, widths[i] - 2 * PAD, pencil.measure()));
        }
        int most = lines.stream().mapToInt(List::size).max().orElse(1);
        double x = PAD;
        for (int i = 0; i < widths.length; i++) {
            double base = y - PAD - height;
            for (String line : lines.get(i)) {
                pencil.text(line, x, base, height, Anchor.START);
                base -= height * Pencil.LINE_PITCH;
            }
            x += widths[i];
        }
        y -= 2 * PAD + height * (1 + (most - 1) * Pencil.LINE_PITCH) + height * 0.3;
        pencil.line(isHead ? Pen.OUTLINE : Pen.THIN, 0, y, width(), y);
    }

    private double width() {
        double width = 0;
        for (double column : widths) {
            width += column;
        }
        return width;
    }

    private Part ruled(String name) {
        double x = 0;
        for (int i = 0; i + 1 < widths.length; i++) {
            x += widths[i];
            pencil.line(Pen.THIN, x, y, x, 0);
        }
        pencil.box(Pen.OUTLINE, new Box(0, y, width(), 0));
        return pencil.part(name);
    }
}
