// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.guide;

import java.util.ArrayList;
import java.util.List;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TableRow;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.CustomNode;
import org.commonmark.node.Text;

/** A Markdown table as lines of characters of one width: cells padded to the widest of their column. */
final class TableText extends AbstractVisitor {
    private static final String BETWEEN = "  ";

    private final List<List<StringBuilder>> rows = new ArrayList<>();

    TableText(TableBlock table) {
        visitChildren(table);
    }

    @Override
    public void visit(CustomNode node) {
        if (node instanceof TableRow) {
            rows.add(new ArrayList<>());
        } else if (node instanceof TableCell) {
            rows.get(rows.size() - 1).add(new StringBuilder());
        }
        visitChildren(node);
    }

    @Override
    public void visit(Text text) {
        cell().append(text.getLiteral());
    }

    @Override
    public void visit(Code code) {
        cell().append(code.getLiteral());
    }

    private StringBuilder cell() {
        List<StringBuilder> row = rows.get(rows.size() - 1);
        return row.get(row.size() - 1);
    }

    /** The lines, the first followed by a rule. */
    @Override
    public String toString() {
        StringBuilder lines = new StringBuilder();
        for (List<StringBuilder> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int column = 0; column < row.size(); column++) {
                String cell = row.get(column).toString();
                line.append(cell).append(" ".repeat(width(column) - cell.length())).append(BETWEEN);
            }
            lines.append(line.toString().stripTrailing()).append('\n');
            if (row == rows.get(0)) {
                lines.append("─".repeat(line.length() - BETWEEN.length())).append('\n');
            }
        }
        return lines.toString();
    }

    private int width(int column) {
        return rows.stream().filter(row -> column < row.size()).mapToInt(row -> row.get(column).length()).max().orElse(0);
    }
}
