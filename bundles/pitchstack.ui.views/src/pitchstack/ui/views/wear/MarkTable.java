// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.wear;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import pitchstack.edit.Session;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.CellEditing;
import pitchstack.ui.views.Columns;

/** The marks as a table that is edited in place: by a double click, or with the arrow keys and F2 or Enter. */
final class MarkTable {
    private static final String HOW = "F2, Enter or a double click edits a cell; Insert adds, Delete takes out.";

    private final TableViewer viewer;
    private final Columns columns;
    private List<MarkItem> items = List.of();
    private Consumer<Optional<MarkItem>> picked = item -> { };

    /**
     * @param session the document
     * @param problem told why something typed cannot be taken, or nothing
     */
    MarkTable(Composite parent, Supplier<Session> session, Consumer<String> problem) {
        Table table = new Table(parent, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        Accessibles.name(table, "Marked and supposed teeth");
        table.addListener(SWT.MouseMove, e -> tell(table, table.getItem(new Point(e.x, e.y))));
        table.setToolTipText(HOW);
        columns = new Columns(table, MarkColumn.NOTE.ordinal(), MarkColumn.titles());
        viewer = new TableViewer(table);
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        HatchImages images = new HatchImages(table);
        for (MarkColumn column : MarkColumn.values()) {
            TableViewerColumn shown = new TableViewerColumn(viewer, table.getColumn(column.ordinal()));
            shown.setLabelProvider(new Labels(column, images));
            shown.setEditingSupport(new MarkCell(viewer, column, session, problem));
        }
        CellEditing.in(viewer);
        viewer.addSelectionChangedListener(e -> picked.accept(chosen()));
    }

    /** A note is often longer than its column. */
    private static void tell(Table table, TableItem item) {
        String note = item == null ? "" : item.getText(MarkColumn.NOTE.ordinal());
        String tip = note.isBlank() ? HOW : note;
        if (!tip.equals(table.getToolTipText())) {
            table.setToolTipText(tip);
        }
    }

    Table control() {
        return viewer.getTable();
    }

    /** @param listener called with the line that is chosen, or with none */
    void onPick(Consumer<Optional<MarkItem>> listener) {
        picked = listener;
    }

    /** Lists marks; lines that stay keep their place, and a cell that is being edited stays open. */
    void show(List<MarkItem> all) {
        Optional<MarkItem> before = chosen();
        if (all.size() == items.size() && IntStream.range(0, all.size()).allMatch(i -> all.get(i).isSame(items.get(i)))) {
            for (int i = 0; i < all.size(); i++) {
                viewer.replace(all.get(i), i);
            }
            items = all;
        } else {
            viewer.cancelEditing();
            items = all;
            viewer.setInput(items);
            before.ifPresent(this::choose);
        }
        columns.fit();
    }

    /** The line that is chosen, if any is. */
    Optional<MarkItem> chosen() {
        int at = viewer.getTable().getSelectionIndex();
        return at < 0 || at >= items.size() ? Optional.empty() : Optional.of(items.get(at));
    }

    /** Chooses the line that is the same as one, where there is one. */
    void choose(MarkItem item) {
        items.stream().filter(item::isSame).findFirst()
                .ifPresent(same -> viewer.setSelection(new StructuredSelection(same), true));
    }

    /** Chooses the first line for the keys to act on where none is chosen, without telling. */
    void chooseFirst() {
        if (chosen().isEmpty() && !items.isEmpty()) {
            viewer.getTable().setSelection(0);
        }
    }

    /** Begins to edit a cell. */
    void edit(MarkItem item, MarkColumn column) {
        items.stream().filter(item::isSame).findFirst().ifPresent(same -> {
            viewer.getTable().setFocus();
            viewer.editElement(same, column.ordinal());
        });
    }

    private static final class Labels extends ColumnLabelProvider {
        private final MarkColumn column;
        private final HatchImages images;

        Labels(MarkColumn column, HatchImages images) {
            this.column = column;
            this.images = images;
        }

        @Override
        public String getText(Object element) {
            return column.text((MarkItem) element);
        }

        @Override
        public Image getImage(Object element) {
            return column == MarkColumn.WEAR ? images.of((MarkItem) element) : null;
        }
    }
}
