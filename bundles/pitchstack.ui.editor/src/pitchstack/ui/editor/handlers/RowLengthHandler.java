// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.handlers;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.emf.ecore.EObject;
import pitchstack.edit.ResizeRow;
import pitchstack.edit.Session;
import pitchstack.model.Row;

/** Lengthens or shortens the selected row by a tooth at its end, as the command says. */
public final class RowLengthHandler extends StageHandler {
    @Override
    boolean applies(EObject element) {
        return element instanceof Row;
    }

    @Override
    void run(ExecutionEvent event, Session session, EObject element) {
        Row row = (Row) element;
        int teeth = ResizeRow.allowed(row, event.getCommand().getId().equals("pitchstack.ui.editor.longer") ? 1 : -1);
        if (teeth != 0) {
            session.run(new ResizeRow(row, 0, teeth));
        }
    }
}
