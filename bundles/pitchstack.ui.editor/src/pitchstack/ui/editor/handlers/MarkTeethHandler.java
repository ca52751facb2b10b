// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.handlers;

import java.util.OptionalInt;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.window.Window;
import org.eclipse.ui.handlers.HandlerUtil;
import pitchstack.edit.AddElement;
import pitchstack.edit.Session;
import pitchstack.model.Row;
import pitchstack.model.Stage;
import pitchstack.ui.editor.StackEditor;
import pitchstack.ui.editor.parts.Elements;

/** Asks for teeth of the selected row, or of a row of the selected stage, and marks them. */
public final class MarkTeethHandler extends StageHandler {
    @Override
    boolean applies(EObject element) {
        return Elements.stage(element)
                .filter(stage -> stage.getBaseRow() != null && stage.getRiderRow() != null).isPresent();
    }

    @Override
    void run(ExecutionEvent event, Session session, EObject element) {
        Stage stage = Elements.stage(element).orElseThrow();
        Row row = Elements.row(element).orElse(stage.getBaseRow());
        OptionalInt tooth = HandlerUtil.getActivePart(event) instanceof StackEditor editor
                ? editor.page().pressedTooth(row) : OptionalInt.empty();
        MarkTeethDialog dialog = new MarkTeethDialog(HandlerUtil.getActiveShell(event), stage, row, tooth.orElse(0));
        if (dialog.open() == Window.OK) {
            session.run(AddElement.wornRange(dialog.row(), dialog.range()));
        }
    }
}
