// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.list;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import pitchstack.model.Target;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.Colours;
import pitchstack.ui.views.coverage.Ink;

/** The table: one row a target, and a last one to type a new target in. */
final class ListTable {
    private static final String NEW_ROW = "Add a target…";

    private final Table table;
    private final ListColumns columns;
    private Color pale;
    private List<Target> rows = List.of();

    ListTable(Composite parent) {
        table = new Table(parent, SWT.MULTI | SWT.FULL_SELECTION | SWT.BORDER);
        Accessibles.name(table, "Target list");
        columns = new ListColumns(table);
        Colours.follow(table, this::recolour);
    }

    private void recolour() {
        Color before = pale;
        pale = new Ink(table.getDisplay()).softText();
        for (TableItem item : table.getItems()) {
            for (int c = 0; c < table.getColumnCount(); c++) {
                if (item.getForeground(c).equals(before)) {
                    item.setForeground(c, pale);
                }
            }
        }
    }

    Table table() {
        return table;
    }

    /** Whether the rows stand in the order of the moves. */
    boolean isInTurn() {
        return columns.isInTurn();
    }

    /** @param listener called when the rows shall stand in another order */
    void onSort(Runnable listener) {
        columns.onSort(listener);
    }

    /**
     * Shows a list. What is selected stays selected as far as it is still there.
     *
     * @param listing the targets
     * @param plan what they come to, or {@code null} while nothing is known
     * @param outdated whether the plan is of the list or the axis as it was before
     * @param free whether the moves have an order of their own
     * @param done the targets that have been set in turn
     */
    void show(Listing listing, ListPlan plan, boolean outdated, boolean free, Set<Target> done) {
        List<Target> chosen = selected();
        boolean onNewRow = isOnNewRow();
        columns.setTurnShown(free);
        List<Listing.Entry> entries = new ArrayList<>(listing.entries());
        List<Listing.Entry> sorted = columns.isInTurn() && plan != null ? inTurn(entries, plan) : entries;
        rows = sorted.stream().map(Listing.Entry::target).toList();
        table.setRedraw(false);
        table.setItemCount(sorted.size() + 1);
        for (int i = 0; i < sorted.size(); i++) {
            Listing.Entry entry = sorted.get(i);
            int number = columns.isInTurn() ? entries.indexOf(entry) + 1 : i + 1;
            fill(table.getItem(i), RowText.of(number, entry, plan, done.contains(entry.target())), outdated);
        }
        fillNewRow(table.getItem(sorted.size()));
        columns.fit(sorted.size());
        select(chosen);
        if (onNewRow) {
            table.select(rows.size());
        }
        table.setRedraw(true);
    }

    /** The targets in the order of the moves; those that were not planned stand at the end. */
    private static List<Listing.Entry> inTurn(List<Listing.Entry> entries, ListPlan plan) {
        List<Target> order = plan.inTurn();
        List<Listing.Entry> sorted = new ArrayList<>(entries);
        sorted.sort((a, b) -> Integer.compare(place(order, a), place(order, b)));
        return sorted;
    }

    private static int place(List<Target> order, Listing.Entry entry) {
        int place = order.indexOf(entry.target());
        return place < 0 ? order.size() : place;
    }

    private void fill(TableItem item, String[] texts, boolean outdated) {
        for (Column column : Column.values()) {
            int c = column.ordinal();
            if (!item.getText(c).equals(texts[c])) {
                item.setText(c, texts[c]);
            }
            item.setForeground(c, outdated && column.isAnswer() ? pale : null);
        }
    }

    private void fillNewRow(TableItem item) {
        String[] texts = new String[Column.values().length];
        Arrays.fill(texts, "");
        texts[Column.NUMBER.ordinal()] = "+";
        texts[Column.NAME.ordinal()] = NEW_ROW;
        fill(item, texts, false);
        item.setForeground(Column.NAME.ordinal(), pale);
    }

    /** The target of a row; empty for the row of a new one. */
    Optional<Target> target(int row) {
        return row >= 0 && row < rows.size() ? Optional.of(rows.get(row)) : Optional.empty();
    }

    /** The row of a target; the row of a new one for {@code null}; −1 for a target that is not in the list. */
    int row(Target target) {
        return target == null ? rows.size() : rows.indexOf(target);
    }

    /** The selected targets, in the order of the rows. */
    List<Target> selected() {
        return Arrays.stream(table.getSelectionIndices()).sorted().mapToObj(this::target).flatMap(Optional::stream).toList();
    }

    private boolean isOnNewRow() {
        return !rows.isEmpty() && table.isSelected(rows.size());
    }

    /** Selects targets without telling. */
    void select(Collection<Target> targets) {
        Set<Target> wanted = new HashSet<>(targets);
        int[] at = IntStream.range(0, rows.size()).filter(i -> wanted.contains(rows.get(i))).toArray();
        if (!Arrays.equals(at, table.getSelectionIndices())) {
            table.deselectAll();
            table.select(at);
        }
    }

    /** Selects one row and brings it into sight, without telling. */
    void reveal(int row) {
        table.setSelection(row);
        table.showSelection();
    }
}
