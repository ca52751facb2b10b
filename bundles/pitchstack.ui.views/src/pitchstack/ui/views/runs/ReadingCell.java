// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.runs;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.eclipse.jface.viewers.CellEditor;
import org.eclipse.jface.viewers.ComboBoxCellEditor;
import org.eclipse.jface.viewers.EditingSupport;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.swt.SWT;
import pitchstack.edit.Property;
import pitchstack.edit.Property.Entry;
import pitchstack.edit.Session;
import pitchstack.model.Reading;
import pitchstack.ui.views.InsistentCell;

/** Lets a column of the readings be edited in place. */
final class ReadingCell extends EditingSupport {
    private final ReadingColumn column;
    private final Supplier<Session> session;
    private final Consumer<String> problem;
    private final InsistentCell typed;
    private final ComboBoxCellEditor chosen;
    private Object edited;

    /**
     * @param problem told why something cannot be taken, or nothing
     * @param next called with the reading whose cell was left by Enter
     */
    ReadingCell(TableViewer viewer, ReadingColumn column, Supplier<Session> session, Consumer<String> problem,
            Consumer<Reading> next) {
        super(viewer);
        this.column = column;
        this.session = session;
        this.problem = problem;
        typed = new InsistentCell(viewer.getTable(), problem);
        typed.onEnter(() -> next.accept((Reading) edited));
        chosen = new ComboBoxCellEditor(viewer.getTable(), new String[0], SWT.READ_ONLY);
        chosen.setActivationStyle(ComboBoxCellEditor.DROP_DOWN_ON_MOUSE_ACTIVATION
                | ComboBoxCellEditor.DROP_DOWN_ON_KEY_ACTIVATION);
    }

    private Property fact(Object element) {
        return column.fact(session.get(), (Reading) element);
    }

    @Override
    protected boolean canEdit(Object element) {
        return column.isTyped() && !fact(element).isDerived();
    }

    @Override
    protected CellEditor getCellEditor(Object element) {
        Property fact = fact(element);
        edited = element;
        if (!fact.choices().isEmpty()) {
            chosen.setItems(fact.choices().toArray(String[]::new));
            return chosen;
        }
        typed.refuse(text -> fact.enter(text) instanceof Entry.Refused refused ? Optional.of(refused.sentence())
                : Optional.empty());
        return typed;
    }

    @Override
    protected Object getValue(Object element) {
        Property fact = fact(element);
        return fact.choices().isEmpty() ? fact.text() : Integer.valueOf(fact.choices().indexOf(fact.text()));
    }

    @Override
    protected void setValue(Object element, Object value) {
        Property fact = fact(element);
        String text = value instanceof Integer choice ? choice < 0 ? fact.text() : fact.choices().get(choice)
                : String.valueOf(value);
        if (text.equals(fact.text())) {
            return;
        }
        Entry entry = fact.enter(text);
        problem.accept(entry instanceof Entry.Refused refused ? refused.sentence() : "");
        if (entry instanceof Entry.Accepted accepted) {
            session.get().run(accepted.edit());
        }
    }
}
