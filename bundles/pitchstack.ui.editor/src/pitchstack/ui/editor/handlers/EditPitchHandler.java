// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.handlers;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.ui.handlers.HandlerUtil;
import pitchstack.edit.Session;
import pitchstack.ui.editor.StackEditor;
import pitchstack.ui.editor.parts.Elements;

/** Opens the field in which the pitch or the name of the selected stage is typed, as the command says. */
public final class EditPitchHandler extends StageHandler {
    @Override
    boolean applies(EObject element) {
        return Elements.stage(element).isPresent();
    }

    @Override
    void run(ExecutionEvent event, Session session, EObject element) {
        if (HandlerUtil.getActiveEditor(event) instanceof StackEditor editor) {
            editor.page().edit(event.getCommand().getId().equals("pitchstack.ui.editor.editName") ? "name" : "pitch");
        }
    }
}
