// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.guide;

import java.util.ArrayList;
import java.util.List;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.Node;
import org.commonmark.node.Text;

/**
 * The cells of a Markdown table.
 *
 * @param rows the rows, the heading first
 */
record TableCells(List<List<TableCell>> rows) {
    /** Longer than this, a cell of a column other than the last would push the next one out of a narrow view. */
    private static final int LONGEST_IN_LINE = 24;

    static TableCells of(TableBlock table) {
        List<List<TableCell>> rows = new ArrayList<>();
        for (Node part = table.getFirstChild(); part != null; part = part.getNext()) {
            for (Node row = part.getFirstChild(); row != null; row = row.getNext()) {
                rows.add(cells(row));
            }
        }
        return new TableCells(rows);
    }

    private static List<TableCell> cells(Node row) {
        List<TableCell> cells = new ArrayList<>();
        for (Node cell = row.getFirstChild(); cell != null; cell = cell.getNext()) {
            cells.add((TableCell) cell);
        }
        return cells;
    }

    /** The cells of the heading. */
    List<TableCell> heading() {
        return rows.get(0);
    }

    /** The rows below the heading. */
    List<List<TableCell>> body() {
        return rows.subList(1, rows.size());
    }

    /** Whether the columns can stand side by side in a narrow view. */
    boolean areNarrow() {
        return rows.stream().flatMap(row -> row.stream().limit(Math.max(0, row.size() - 1)))
                .allMatch(cell -> length(cell) <= LONGEST_IN_LINE);
    }

    private static int length(TableCell cell) {
        int[] length = {0};
        cell.accept(new AbstractVisitor() {
            @Override
            public void visit(Text text) {
                length[0] += text.getLiteral().length();
            }

            @Override
            public void visit(Code code) {
                length[0] += code.getLiteral().length();
            }
        });
        return length[0];
    }
}
