// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;

/** Column widths that never cut a number short: each column as wide as its texts, one of them taking the rest. */
public final class Columns {
    private final Table table;
    private final TableColumn elastic;
    private int least = Integer.MAX_VALUE;

    /**
     * Adds the columns to a table.
     *
     * @param table a table without columns
     * @param elastic the column that takes the room that is left, counted from 0
     * @param titles one title a column; numbers stand on the right where the title ends with a tab, which is not shown
     */
    public Columns(Table table, int elastic, String... titles) {
        this.table = table;
        table.setHeaderVisible(true);
        for (String title : titles) {
            TableColumn column = new TableColumn(table, title.endsWith("\t") ? SWT.RIGHT : SWT.LEFT);
            column.setText(title.strip());
        }
        this.elastic = table.getColumn(elastic);
        table.addListener(SWT.Resize, e -> fit());
    }

    /**
     * Lets the elastic column be cut where the table is too narrow for all of them, so that the others stay in sight.
     *
     * @param width what it keeps at least, in pixels
     */
    public Columns cutting(int width) {
        least = width;
        return this;
    }

    /** How high a table is with its header, so many rows and a bar to scroll, whatever the size of the letters. */
    public static int height(Table table, int rows) {
        return table.getHeaderHeight() + rows * table.getItemHeight() + table.getHorizontalBar().getSize().y;
    }

    /** Fits the columns to their texts; to be called when the texts have changed. */
    public void fit() {
        if (table.getSize().y == 0) {
            return;
        }
        int used = 0;
        for (TableColumn column : table.getColumns()) {
            column.pack();
            used += column.getWidth();
        }
        int left = table.getClientArea().width - used;
        elastic.setWidth(left >= 0 ? elastic.getWidth() + left
                : Math.min(elastic.getWidth(), Math.max(least, elastic.getWidth() + left)));
    }
}
