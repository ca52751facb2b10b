// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.targets;

import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import pitchstack.model.Axis;
import pitchstack.model.Target;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.Columns;
import pitchstack.ui.views.TableMenu;

/** The targets kept in the file, to pick from. */
final class SavedTargets {
    private static final int LEAST_ROWS = 4;
    private static final int NARROW = 60;
    private static final int SPACING = 5;

    private final Table table;
    private final Columns columns;
    private final Button save;
    private final Button delete;
    private Consumer<Target> picked = t -> { };
    private Consumer<Target> shown = t -> { };

    SavedTargets(Composite parent, int span) {
        Composite head = new Composite(parent, SWT.NONE);
        RowLayoutFactory.fillDefaults().center(true).spacing(SPACING).applyTo(head);
        GridDataFactory.fillDefaults().grab(true, false).span(span, 1).hint(NARROW, SWT.DEFAULT).applyTo(head);
        new Label(head, SWT.NONE).setText("Saved targets");
        save = button(head, "Save target…", "Keep what is typed above in the file, under a name");
        delete = button(head, "Delete", "Take the chosen target out of the file");
        table = new Table(parent, SWT.BORDER | SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL);
        Accessibles.name(table, "Saved targets");
        columns = new Columns(table, 0, "Name", "Position", "Tolerance").cutting(NARROW);
        GridDataFactory.fillDefaults().grab(true, false).span(span, 1)
                .hint(SWT.DEFAULT, height(LEAST_ROWS)).applyTo(table);
        table.addListener(SWT.Selection, e -> selected().ifPresent(t -> picked.accept(t)));
        table.addListener(SWT.Selection, e -> delete.setEnabled(selected().isPresent()));
    }

    /** @param listener called with a target that shall be shown in the drawing */
    void onShow(Consumer<Target> listener) {
        shown = listener;
    }

    private int height(int rows) {
        return table.getHeaderHeight() + rows * table.getItemHeight();
    }

    /**
     * Takes as many rows as there are targets, as far as there is room.
     *
     * @param most the height that may be taken, in pixels; a few rows are shown even where it is less
     */
    void fitWithin(int most) {
        int room = (most - table.getHeaderHeight()) / table.getItemHeight();
        int rows = Math.max(1, Math.min(Math.max(LEAST_ROWS, room), table.getItemCount()));
        ((GridData) table.getLayoutData()).heightHint = height(rows);
    }

    /** The height that the rows and their titles take, in pixels. */
    int height() {
        return ((GridData) table.getLayoutData()).heightHint;
    }

    private static Button button(Composite parent, String text, String tooltip) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(text);
        button.setToolTipText(tooltip);
        return button;
    }

    /** @param listener called with the target that a person picks */
    void onPick(Consumer<Target> listener) {
        picked = listener;
    }

    /** @param listener called when Enter is pressed on the picked target */
    void onEnter(Runnable listener) {
        table.addListener(SWT.DefaultSelection, e -> listener.run());
    }

    /** @param listener called when what is typed shall be kept */
    void onSave(Runnable listener) {
        save.addListener(SWT.Selection, e -> listener.run());
    }

    /** @param listener called with the target that shall be taken out */
    void onDelete(Consumer<Target> listener) {
        delete.addListener(SWT.Selection, e -> selected().ifPresent(listener));
        new TableMenu(table).add("Show in &Drawing", 0, () -> selected().ifPresent(shown))
                .add("De&lete", SWT.DEL, () -> selected().ifPresent(listener));
        table.addListener(SWT.KeyDown, e -> {
            if (e.keyCode == SWT.DEL && (e.stateMask & SWT.MODIFIER_MASK) == 0) {
                selected().ifPresent(listener);
            }
        });
    }

    /** Lists the targets of an axis; the chosen one stays chosen while it exists. */
    void show(Axis axis) {
        Target chosen = selected().orElse(null);
        table.removeAll();
        for (Target target : axis.getTargets()) {
            TableItem item = new TableItem(table, SWT.NONE);
            item.setText(new String[] {text(target.getName()), text(target.getPosition()), text(target.getTolerance())});
            item.setData(target);
            if (target == chosen) {
                table.setSelection(item);
            }
        }
        columns.fit();
        delete.setEnabled(selected().isPresent());
    }

    /** The chosen target. */
    Optional<Target> selected() {
        TableItem[] chosen = table.getSelection();
        return chosen.length == 0 ? Optional.empty() : Optional.of((Target) chosen[0].getData());
    }

    /** Shows that what is typed is none of them. */
    void deselect() {
        table.deselectAll();
        delete.setEnabled(false);
    }

    /** Shows one of them as chosen, without telling. */
    void select(Target target) {
        for (TableItem item : table.getItems()) {
            if (item.getData() == target) {
                table.setSelection(item);
            }
        }
        delete.setEnabled(selected().isPresent());
    }

    /** Says whether what is typed can be kept. */
    void setSavable(boolean savable) {
        save.setEnabled(savable);
    }

    private static String text(String text) {
        return text == null ? "" : text;
    }
}
