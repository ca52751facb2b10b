// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.wear;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.eclipse.jface.viewers.CellEditor;
import org.eclipse.jface.viewers.ComboBoxCellEditor;
import org.eclipse.jface.viewers.EditingSupport;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.swt.SWT;
import pitchstack.edit.Session;
import pitchstack.edit.ToothMark;
import pitchstack.ui.views.InsistentCell;

/** Lets one column be edited in place. */
final class MarkCell extends EditingSupport {
    private final MarkColumn column;
    private final Supplier<Session> session;
    private final Consumer<String> problem;
    private final InsistentCell typed;
    private final ComboBoxCellEditor chosen;

    /**
     * @param session the document
     * @param problem told why something cannot be taken, or nothing
     */
    MarkCell(TableViewer viewer, MarkColumn column, Supplier<Session> session, Consumer<String> problem) {
        super(viewer);
        this.column = column;
        this.session = session;
        this.problem = problem;
        typed = new InsistentCell(viewer.getTable(), problem);
        chosen = new ComboBoxCellEditor(viewer.getTable(), new String[0], SWT.READ_ONLY);
        chosen.setActivationStyle(ComboBoxCellEditor.DROP_DOWN_ON_MOUSE_ACTIVATION
                | ComboBoxCellEditor.DROP_DOWN_ON_KEY_ACTIVATION);
    }

    @Override
    protected boolean canEdit(Object element) {
        return true;
    }

    @Override
    protected CellEditor getCellEditor(Object element) {
        MarkItem item = (MarkItem) element;
        if (column.isTyped()) {
            typed.refuse(text -> refusal(item, column.type(item, text)));
            return typed;
        }
        chosen.setItems(column.choices(session.get()).toArray(String[]::new));
        return chosen;
    }

    private Optional<String> refusal(MarkItem item, MarkColumn.Typed typedText) {
        return typedText.mark().map(mark -> new MarkEdits(session.get()).refusal(item, mark))
                .orElse(Optional.of(typedText.refusal()));
    }

    @Override
    protected Object getValue(Object element) {
        MarkItem item = (MarkItem) element;
        return column.isTyped() ? column.text(item) : Integer.valueOf(column.chosen(session.get(), item));
    }

    @Override
    protected void setValue(Object element, Object value) {
        MarkItem item = (MarkItem) element;
        if (value instanceof Integer choice && choice >= 0) {
            take(item, column.choose(session.get(), item, choice));
        } else if (value instanceof String text) {
            column.type(item, text).mark().ifPresent(mark -> take(item, mark));
        }
    }

    private void take(MarkItem item, ToothMark wanted) {
        MarkEdits edits = new MarkEdits(session.get());
        Optional<String> why = wanted.equals(item.mark()) ? Optional.empty() : edits.refusal(item, wanted);
        problem.accept(why.orElse(""));
        if (why.isEmpty()) {
            edits.change(item, wanted);
        }
    }
}
