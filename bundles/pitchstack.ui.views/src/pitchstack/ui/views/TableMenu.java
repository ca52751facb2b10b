// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** The context menu of a table: what can be done with its rows, and copies of them for other programs, by Ctrl+C too. */
public final class TableMenu {
    private final Table table;
    private final Function<TableItem, String[]> texts;
    private final List<Entry> entries = new ArrayList<>();

    private record Entry(String text, int key, BooleanSupplier possible, Runnable what) { }

    /** @param table a table without a context menu */
    public TableMenu(Table table) {
        this(table, row -> IntStream.range(0, table.getColumnCount()).mapToObj(row::getText).toArray(String[]::new));
    }

    /**
     * The same, of a table that may show less than it is told.
     *
     * @param table a table without a context menu
     * @param texts gives what is copied of a row, one text a column
     */
    public TableMenu(Table table, Function<TableItem, String[]> texts) {
        this.table = table;
        this.texts = texts;
        MenuManager menu = new MenuManager();
        menu.setRemoveAllWhenShown(true);
        menu.addMenuListener(this::fill);
        table.setMenu(menu.createContextMenu(table));
        table.addListener(SWT.KeyDown, this::pressed);
    }

    /**
     * Adds what can be done with a row that is chosen.
     *
     * @param text with its mnemonic
     * @param key shown beside it, 0 for none; whoever adds it sees to the key
     */
    public TableMenu add(String text, int key, Runnable what) {
        return add(text, key, () -> table.getSelectionCount() > 0, what);
    }

    /** The same, where it is possible under some condition. */
    public TableMenu add(String text, int key, BooleanSupplier possible, Runnable what) {
        entries.add(new Entry(text, key, possible, what));
        return this;
    }

    private void fill(IMenuManager menu) {
        entries.forEach(entry -> menu.add(action(entry)));
        menu.add(new Separator());
        menu.add(action(new Entry(table.getSelectionCount() > 1 ? "&Copy Rows" : "&Copy Row", SWT.MOD1 | 'C',
                () -> table.getSelectionCount() > 0, () -> copy(table.getSelection()))));
        menu.add(action(new Entry("Copy &Table", 0, () -> table.getItemCount() > 0, this::copyAll)));
    }

    private static Action action(Entry entry) {
        Action action = new Action(entry.text()) {
            @Override
            public void run() {
                entry.what().run();
            }
        };
        action.setAccelerator(entry.key());
        action.setEnabled(entry.possible().getAsBoolean());
        return action;
    }

    private void pressed(Event event) {
        if ((event.stateMask & SWT.MODIFIER_MASK) == SWT.MOD1 && Character.toLowerCase(event.keyCode) == 'c'
                && table.getSelectionCount() > 0) {
            event.doit = false;
            copy(table.getSelection());
        }
    }

    private void copyAll() {
        copy(Stream.concat(Stream.of(Stream.of(table.getColumns()).map(TableColumn::getText)
                .collect(Collectors.joining("\t"))), Stream.of(table.getItems()).map(this::line)));
    }

    private void copy(TableItem... rows) {
        copy(Stream.of(rows).map(this::line));
    }

    private String line(TableItem row) {
        return String.join("\t", texts.apply(row));
    }

    private void copy(Stream<String> lines) {
        Clipboard clipboard = new Clipboard(table.getDisplay());
        clipboard.setContents(new Object[] {lines.collect(Collectors.joining(System.lineSeparator()))},
                new Transfer[] {TextTransfer.getInstance()});
        clipboard.dispose();
    }
}
