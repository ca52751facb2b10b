// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.list;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.TableEditor;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import pitchstack.model.Target;
import pitchstack.ui.views.Accessibles;

/**
 * Typing in a cell. Enter, Tab, an arrow up or down and leaving the cell take what is typed; Escape drops it. What is
 * refused stays in the cell as it was typed.
 */
final class CellEntry {
    private static final int LEAST_WIDTH_PX = 110;

    /** Takes a text that was typed. */
    interface Taker {
        /**
         * Takes a text.
         *
         * @param target the target, or {@code null} for a new one
         * @param column one that can be typed in
         * @param text what was typed
         * @return the target it went to; empty if it was refused, which the taker then has said
         */
        Optional<Target> take(Target target, Column column, String text);
    }

    private final ListTable list;
    private final Table table;
    private final TableEditor editor;
    private final Taker taker;
    private final Runnable dropped;
    private Text text;
    private Target target;
    private Column column = Column.POSITION;
    private String before = "";
    private boolean closing;

    /**
     * @param list where it types
     * @param taker takes what is typed
     * @param dropped called when typing has ended without anything left to say
     */
    CellEntry(ListTable list, Taker taker, Runnable dropped) {
        this.list = list;
        this.table = list.table();
        this.taker = taker;
        this.dropped = dropped;
        editor = new TableEditor(table);
        editor.horizontalAlignment = SWT.LEFT;
        editor.grabHorizontal = true;
        table.addListener(SWT.MouseDoubleClick, e -> clicked(new Point(e.x, e.y)));
        table.addListener(SWT.Resize, e -> keepInSight());
    }

    /** A longer sentence above the table leaves it fewer rows; what is typed must not be among those that are hidden. */
    private void keepInSight() {
        if (isOpen()) {
            table.showItem(editor.getItem());
            editor.layout();
        }
    }

    private void clicked(Point at) {
        TableItem item = table.getItem(at);
        if (item == null) {
            return;
        }
        int row = table.indexOf(item);
        for (Column one : Column.values()) {
            if (item.getBounds(one.ordinal()).contains(at)) {
                begin(row, one.feature().isPresent() ? one : column, null);
            }
        }
    }

    /** Whether a cell is being typed in. */
    boolean isOpen() {
        return text != null;
    }

    /**
     * Begins where typing ended last, in a row.
     *
     * @param row a row of the table
     * @param typed what is typed already, in place of what stands in the cell; or {@code null}
     */
    void begin(int row, String typed) {
        begin(row, column, typed);
    }

    private void begin(int row, Column wanted, String typed) {
        if (isOpen() && !take()) {
            return;
        }
        list.reveal(row);
        target = list.target(row).orElse(null);
        column = target == null ? Column.POSITION : wanted;
        table.showColumn(table.getColumn(column.ordinal()));
        before = target == null ? "" : table.getItem(row).getText(column.ordinal());
        text = new Text(table, SWT.SINGLE | SWT.BORDER);
        text.setToolTipText(column.tooltip());
        Accessibles.name(text, column.title());
        text.setText(typed == null ? before : typed);
        editor.minimumWidth = LEAST_WIDTH_PX;
        editor.setEditor(text, table.getItem(row), column.ordinal());
        text.addListener(SWT.Traverse, this::traverse);
        text.addListener(SWT.KeyDown, this::arrow);
        text.addListener(SWT.FocusOut, e -> left());
        text.setFocus();
        if (typed == null) {
            text.selectAll();
        } else {
            text.setSelection(typed.length());
        }
    }

    private void left() {
        if (isOpen() && !closing) {
            take();
        }
    }

    private void traverse(Event e) {
        switch (e.detail) {
            case SWT.TRAVERSE_RETURN -> {
                e.doit = false;
                enter();
            }
            case SWT.TRAVERSE_ESCAPE -> {
                e.doit = false;
                drop();
            }
            case SWT.TRAVERSE_TAB_NEXT, SWT.TRAVERSE_TAB_PREVIOUS -> {
                e.doit = false;
                beside(e.detail == SWT.TRAVERSE_TAB_NEXT ? 1 : -1);
            }
            default -> { }
        }
    }

    private void enter() {
        boolean wasNew = target == null;
        if (take()) {
            table.setFocus();
            if (wasNew && !before.isEmpty()) {
                begin(list.row(null), null);
            }
        }
    }

    private void beside(int way) {
        boolean wasEmpty = target == null && text.getText().isBlank();
        if (wasEmpty || !take()) {
            return;
        }
        List<Column> typed = Column.typed();
        int next = typed.indexOf(column) + way;
        int row = list.row(target) + (next < 0 ? -1 : next >= typed.size() ? 1 : 0);
        if (row >= 0 && row < table.getItemCount()) {
            begin(row, typed.get(Math.floorMod(next, typed.size())), null);
        }
    }

    private void arrow(Event e) {
        if ((e.keyCode == SWT.ARROW_UP || e.keyCode == SWT.ARROW_DOWN) && (e.stateMask & SWT.MODIFIER_MASK) == 0) {
            e.doit = false;
            int way = e.keyCode == SWT.ARROW_UP ? -1 : 1;
            if (take()) {
                int row = list.row(target) + way;
                begin(Math.max(0, Math.min(table.getItemCount() - 1, row)), column, null);
            }
        }
    }

    /** Takes what is typed, if anything; tells whether the cell is closed. */
    private boolean take() {
        String typed = text.getText();
        if (!typed.equals(before)) {
            Optional<Target> taken = taker.take(target, column, typed);
            if (taken.isEmpty()) {
                return false;
            }
            target = taken.get();
            before = typed;
        }
        close();
        return true;
    }

    /** Drops what is typed. */
    void drop() {
        boolean focus = isOpen() && text.isFocusControl();
        close();
        if (focus) {
            table.setFocus();
        }
    }

    private void close() {
        if (isOpen()) {
            closing = true;
            editor.setEditor(null);
            text.dispose();
            text = null;
            closing = false;
            dropped.run();
        }
    }

    /** Keeps the cell at its target after the rows have changed; drops what is typed where the target is gone. */
    void follow() {
        if (isOpen()) {
            int row = list.row(target);
            if (row < 0) {
                drop();
            } else {
                editor.setItem(table.getItem(row));
                keepInSight();
            }
        }
    }
}
