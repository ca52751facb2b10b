// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.runs;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import pitchstack.edit.Session;
import pitchstack.model.Reading;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.CellEditing;
import pitchstack.ui.views.Columns;

/** The readings of a run as a table that is edited in place; Enter in a reading goes on to the next one. */
final class ReadingTable {
    private final TableViewer viewer;
    private final Columns columns;
    private final List<ReadingColumn> kinds;
    private final Supplier<Session> session;
    private List<Reading> readings = List.of();
    private Map<Reading, String> deviations = Map.of();

    /**
     * @param session the document
     * @param problem told why something typed cannot be taken, or nothing
     */
    ReadingTable(Composite parent, List<ReadingColumn> kinds, Supplier<Session> session, Consumer<String> problem) {
        this.kinds = kinds;
        this.session = session;
        Table table = new Table(parent, SWT.BORDER | SWT.FULL_SELECTION | SWT.MULTI);
        Accessibles.name(table, "Readings of the run");
        table.setToolTipText("F2, Enter or a double click edits a cell; Insert adds a reading, Delete takes out.");
        columns = new Columns(table, kinds.size() - 1, kinds.stream().map(ReadingColumn::title).toArray(String[]::new));
        viewer = new TableViewer(table);
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        for (int i = 0; i < kinds.size(); i++) {
            ReadingColumn kind = kinds.get(i);
            table.getColumn(i).setToolTipText(kind.tooltip());
            TableViewerColumn shown = new TableViewerColumn(viewer, table.getColumn(i));
            shown.setLabelProvider(ColumnLabelProvider.createTextProvider(element -> text(kind, (Reading) element)));
            int at = i;
            shown.setEditingSupport(new ReadingCell(viewer, kind, session, problem, reading -> next(reading, at)));
        }
        CellEditing.in(viewer);
    }

    Table control() {
        return viewer.getTable();
    }

    /** What columns it has. */
    List<ReadingColumn> kinds() {
        return kinds;
    }

    private String text(ReadingColumn kind, Reading reading) {
        if (kind == ReadingColumn.NUMBER) {
            return String.valueOf(readings.indexOf(reading) + 1);
        }
        if (kind == ReadingColumn.DEVIATION) {
            return deviations.getOrDefault(reading, "");
        }
        return reading.eContainer() == null ? "" : kind.fact(session.get(), reading).text();
    }

    /** Lists readings; those that stay keep their place, and a cell that is being edited stays open. */
    void show(List<Reading> all) {
        List<Reading> chosen = chosen();
        boolean same = all.equals(readings);
        readings = List.copyOf(all);
        if (same) {
            relabel();
        } else {
            viewer.cancelEditing();
            viewer.setInput(readings);
            choose(chosen);
        }
        columns.fit();
    }

    /** Shows how far readings are off the plan. */
    void deviate(Map<Reading, String> off) {
        deviations = off;
        relabel();
        columns.fit();
    }

    /** Row by row, since a refresh of the whole table closes the cell that is being edited. */
    private void relabel() {
        for (int i = 0; i < readings.size(); i++) {
            viewer.replace(readings.get(i), i);
        }
    }

    /** The readings that are chosen, in order. */
    List<Reading> chosen() {
        return Arrays.stream(viewer.getTable().getSelectionIndices()).sorted().filter(i -> i < readings.size())
                .mapToObj(readings::get).toList();
    }

    /** Chooses readings. */
    void choose(List<Reading> some) {
        viewer.setSelection(new StructuredSelection(some), true);
    }

    /** Begins to edit the first cell of a kind of a reading. */
    void edit(Reading reading, ReadingColumn kind) {
        viewer.getTable().setFocus();
        viewer.editElement(reading, kinds.indexOf(kind));
    }

    /** After Enter in a reading the next one is read; elsewhere the eye stays where it is. */
    private void next(Reading reading, int column) {
        int at = readings.indexOf(reading) + 1;
        if (kinds.get(column) == ReadingColumn.READING && at < readings.size()) {
            Reading below = readings.get(at);
            viewer.getTable().getDisplay().asyncExec(() -> {
                if (!viewer.getTable().isDisposed() && readings.contains(below)) {
                    choose(List.of(below));
                    viewer.editElement(below, column);
                }
            });
        }
    }
}
