// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;

/** A table of a terminal: the first column from the left, numbers from the right, two blanks between. */
final class TextTable {
    private static final String BETWEEN = "  ";

    private final List<List<String>> rows = new ArrayList<>();

    /** A table with these headings. */
    TextTable(String... headings) {
        rows.add(List.of(headings));
    }

    /** Adds a row with a cell for each heading. */
    void add(String... cells) {
        if (cells.length != rows.get(0).size()) {
            throw new IllegalArgumentException("The table has " + rows.get(0).size() + " columns, the row " + cells.length);
        }
        rows.add(List.of(cells));
    }

    /** Writes it. */
    void write(PrintWriter out) {
        int columns = rows.get(0).size();
        int[] width = new int[columns];
        for (List<String> row : rows) {
            for (int i = 0; i < columns; i++) {
                width[i] = Math.max(width[i], length(row.get(i)));
            }
        }
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < columns; i++) {
                String blanks = " ".repeat(width[i] - length(row.get(i)));
                line.append(i == 0 ? row.get(i) + blanks : BETWEEN + blanks + row.get(i));
            }
            out.println(line.toString().stripTrailing());
        }
    }

    /** A mark that stands over a letter takes no place of its own. */
    private static int length(String cell) {
        return (int) cell.codePoints().filter(c -> Character.getType(c) != Character.NON_SPACING_MARK).count();
    }
}
