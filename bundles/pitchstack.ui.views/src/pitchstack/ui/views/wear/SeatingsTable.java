// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.wear;

import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import pitchstack.core.coverage.RowSeatings;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.Columns;
import pitchstack.ui.views.TableMenu;

/** The most used teeth of every row. */
final class SeatingsTable {
    private final Table table;
    private final Columns columns;

    SeatingsTable(Composite parent, Runnable picked) {
        table = new Table(parent, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        Accessibles.name(table, "Most used teeth by row");
        columns = new Columns(table, 1, "Row", "Most used", "Times\t", "Unused\t");
        table.setToolTipText("The most used teeth of each row, how often they are seated, and how many are never used.");
        table.addListener(SWT.Selection, e -> picked.run());
        new TableMenu(table);
    }

    Table control() {
        return table;
    }

    /** The row that is chosen, if any is. */
    Optional<RowSeatings> chosen() {
        TableItem[] chosen = table.getSelection();
        return chosen.length == 0 ? Optional.empty() : Optional.of((RowSeatings) chosen[0].getData());
    }

    /** Lists the rows; the same row stays chosen, or else the longest is. */
    void show(Load load, int times) {
        Optional<RowSeatings> before = chosen();
        table.removeAll();
        for (RowSeatings row : load.rows()) {
            TableItem item = new TableItem(table, SWT.NONE);
            item.setText(new String[] {load.name(row), row.most() == 0 ? "none" : SeatingsWords.mostUsed(row),
                    String.valueOf((long) row.most() * times), row.teeth(0) + " of " + row.counts().length});
            item.setData(row);
            if (before.filter(b -> b.stage() == row.stage() && b.row() == row.row()).isPresent()) {
                table.setSelection(item);
            }
        }
        if (table.getSelectionIndex() < 0) {
            table.setSelection(load.longest());
        }
        columns.fit();
    }

    void clear() {
        table.removeAll();
    }
}
