// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.wear;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.ISharedImages;
import pitchstack.edit.Session;
import pitchstack.edit.ToothMark;
import pitchstack.model.Row;
import pitchstack.model.WearKind;
import pitchstack.model.WornRange;
import pitchstack.ui.views.Columns;
import pitchstack.ui.views.Notice;
import pitchstack.ui.views.TableMenu;

/** Marked and supposed teeth, and what can be done with them. */
final class MarksPane {
    private static final int NARROW = 60;
    private static final int ROWS = 3;

    private final Composite pane;
    private final MarkTable table;
    private final Notice bad;
    private final Button delete;
    private final Button keep;
    private final Button forget;
    private final Supplier<Row> selectedRow;
    private final Runnable grown;
    private Session session;

    /**
     * @param selectedRow the row to mark teeth of where none is chosen in the table; {@code null} where there is none
     * @param picked called with the line that is chosen, or with none
     * @param reveal called with a range that shall be shown in the drawing
     * @param grown called when it needs another height
     */
    MarksPane(Composite parent, Supplier<Row> selectedRow, Consumer<Optional<MarkItem>> picked,
            Consumer<WornRange> reveal, Runnable grown) {
        this.grown = grown;
        this.selectedRow = selectedRow;
        pane = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(pane);
        Composite buttons = new Composite(pane, SWT.NONE);
        RowLayoutFactory.fillDefaults().spacing(4).applyTo(buttons);
        GridDataFactory.fillDefaults().grab(true, false).hint(NARROW, SWT.DEFAULT).applyTo(buttons);
        button(buttons, "&Mark…", "Marks a tooth as worn in the file, to be changed in the table (Insert)", this::add);
        button(buttons, "S&uppose…", "Supposes a tooth to be barred, to see what that would cost; the file stays as it is"
                + " (Shift+Insert)", this::suppose);
        delete = button(buttons, "Delete", "Takes the chosen range out (Delete)", this::delete);
        keep = button(buttons, "&Keep as Marks", "Marks in the file all that is supposed, as one change",
                () -> new MarkEdits(session).keep());
        forget = button(buttons, "F&orget", "Drops all that is supposed", () -> new MarkEdits(session).forget());
        bad = new Notice(pane, ISharedImages.IMG_OBJS_ERROR_TSK, 1);
        table = new MarkTable(pane, () -> session, this::problem);
        GridDataFactory.fillDefaults().grab(true, true).hint(NARROW, Columns.height(table.control(), ROWS))
                .applyTo(table.control());
        Label what = new Label(pane, SWT.WRAP);
        what.setText("Suppose… tries out; file and plans stay as they are.");
        GridDataFactory.fillDefaults().grab(true, false).hint(NARROW, SWT.DEFAULT).applyTo(what);
        table.onPick(item -> {
            update();
            picked.accept(item);
        });
        table.control().addListener(SWT.KeyDown, this::key);
        menu(reveal);
        table.control().addListener(SWT.FocusIn, e -> {
            table.chooseFirst();
            update();
        });
    }

    private void menu(Consumer<WornRange> reveal) {
        new TableMenu(table.control())
                .add("Show in &Drawing", 0, () -> table.chosen().flatMap(MarkItem::range).isPresent(),
                        () -> table.chosen().flatMap(MarkItem::range).ifPresent(reveal))
                .add("&Mark…", SWT.INSERT, () -> true, this::add)
                .add("S&uppose…", SWT.SHIFT | SWT.INSERT, () -> true, this::suppose)
                .add("De&lete", SWT.DEL, this::delete)
                .add("&Keep as Marks", 0, keep::isEnabled, () -> new MarkEdits(session).keep())
                .add("F&orget", 0, forget::isEnabled, () -> new MarkEdits(session).forget());
    }

    private static Button button(Composite parent, String text, String tooltip, Runnable action) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(text);
        button.setToolTipText(tooltip);
        button.addListener(SWT.Selection, e -> action.run());
        return button;
    }

    Control control() {
        return pane;
    }

    void setFocus() {
        table.control().setFocus();
    }

    private void problem(String sentence) {
        if (!pane.isDisposed()) {
            bad.say(sentence);
            pane.layout();
            grown.run();
        }
    }

    /** Shows the marks of the axis that a session looks at. */
    void show(Session shown) {
        if (session != shown) {
            session = shown;
            problem("");
        }
        refresh();
    }

    /** Takes up a change once the event is over: it may come from a cell that is still closing. */
    void later() {
        Session asked = session;
        pane.getDisplay().asyncExec(() -> {
            if (!pane.isDisposed() && session == asked) {
                refresh();
            }
        });
    }

    private void refresh() {
        table.show(MarkItem.of(session));
        update();
    }

    private void update() {
        boolean supposed = session != null && !session.supposed().isEmpty();
        keep.setEnabled(supposed);
        forget.setEnabled(supposed);
        delete.setEnabled(table.chosen().isPresent());
    }

    /** Chooses the line of an element of the document, where it has one. */
    void choose(Object element) {
        MarkItem.of(session).stream().filter(item -> item.range().filter(range -> range == element).isPresent()).findFirst()
                .ifPresent(table::choose);
    }

    private void key(Event e) {
        int modifiers = e.stateMask & SWT.MODIFIER_MASK;
        if (e.keyCode == SWT.INSERT && modifiers == 0) {
            add();
        } else if (e.keyCode == SWT.INSERT && modifiers == SWT.SHIFT) {
            suppose();
        } else if (e.keyCode == SWT.DEL && modifiers == 0) {
            delete();
        }
    }

    private void add() {
        proposal(WearKind.WORN).ifPresent(mark -> {
            new MarkEdits(session).add(mark);
            editLast(mark, false);
        });
    }

    private void suppose() {
        proposal(WearKind.BARRED).ifPresent(mark -> {
            new MarkEdits(session).suppose(mark);
            editLast(mark, true);
        });
    }

    private Optional<ToothMark> proposal(WearKind kind) {
        Row row = table.chosen().map(item -> item.mark().row()).orElseGet(selectedRow);
        if (row == null) {
            return Optional.empty();
        }
        Optional<ToothMark> mark = new MarkEdits(session).proposal(row, kind);
        problem(mark.isPresent() ? "" : "Every tooth of the " + ToothMark.words(row)
                + " is marked or supposed already; choose a line of another row.");
        return mark;
    }

    private void editLast(ToothMark mark, boolean supposed) {
        refresh();
        MarkItem.of(session).stream().filter(item -> item.isSupposed() == supposed && item.mark().equals(mark)).findFirst()
                .ifPresent(item -> {
                    table.choose(item);
                    table.edit(item, MarkColumn.FIRST);
                });
    }

    private void delete() {
        problem("");
        table.chosen().ifPresent(item -> new MarkEdits(session).delete(item));
    }
}
