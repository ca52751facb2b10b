// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.list;

import java.util.HashMap;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;

/** Titles, widths and sorting of the table's columns. A width that a person has given stays. */
final class ListColumns {
    /** Wider texts are read in full in the pane below, or by widening the column. */
    private static final Map<Column, Integer> MOST_PX =
            Map.of(Column.NAME, 170, Column.SETTING, 460, Column.NOTE, 260, Column.WORN, 150);
    /** Beyond this many rows measuring them all would be felt; their widths are then those of the first lists shown. */
    private static final int MOST_MEASURED = 500;

    private final Table table;
    private final Map<TableColumn, Integer> given = new HashMap<>();
    private Runnable sorted = () -> { };
    private boolean fitting;
    private boolean turnShown;
    private boolean inTurn;
    private boolean fitted;

    ListColumns(Table table) {
        this.table = table;
        table.setHeaderVisible(true);
        for (Column column : Column.values()) {
            TableColumn made = new TableColumn(table, column.isNumber() ? SWT.RIGHT : SWT.LEFT);
            made.setText(column.title());
            made.setToolTipText(column.tooltip());
            made.setMoveable(true);
            made.addListener(SWT.Resize, e -> resized(made));
        }
        column(Column.NUMBER).addListener(SWT.Selection, e -> sort(false));
        column(Column.TURN).addListener(SWT.Selection, e -> sort(true));
        setTurnShown(false);
        column(Column.TURN).setResizable(false);
        column(Column.TURN).setWidth(0);
    }

    void onSort(Runnable listener) {
        sorted = listener;
    }

    boolean isInTurn() {
        return inTurn && turnShown;
    }

    /** Says whether the moves have an order of their own, which then has a column. */
    void setTurnShown(boolean shown) {
        fitted &= turnShown == shown;
        turnShown = shown;
        table.setSortColumn(column(isInTurn() ? Column.TURN : Column.NUMBER));
        table.setSortDirection(SWT.UP);
    }

    private TableColumn column(Column column) {
        return table.getColumn(column.ordinal());
    }

    private void sort(boolean byTurn) {
        inTurn = byTurn;
        setTurnShown(turnShown);
        sorted.run();
    }

    private void resized(TableColumn column) {
        if (!fitting && fitted) {
            given.put(column, column.getWidth());
        }
    }

    /** Fits the columns to their texts. */
    void fit(int rows) {
        if (rows > MOST_MEASURED && fitted) {
            return;
        }
        fitting = true;
        for (Column column : Column.values()) {
            TableColumn of = column(column);
            if (column == Column.TURN && !turnShown) {
                of.setWidth(0);
            } else if (!given.containsKey(of)) {
                of.pack();
                of.setWidth(Math.min(of.getWidth(), MOST_PX.getOrDefault(column, Integer.MAX_VALUE)));
            }
        }
        fitting = false;
        fitted = true;
    }
}
