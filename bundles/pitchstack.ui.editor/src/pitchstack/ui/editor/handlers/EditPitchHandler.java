// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.handlers;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.handlers.HandlerUtil;
import pitchstack.ui.editor.StackEditor;

/** Opens the field in which the pitch of the selected stage is typed. */
public final class EditPitchHandler extends AbstractHandler {
    @Override
    public Object execute(ExecutionEvent event) {
        if (HandlerUtil.getActiveEditor(event) instanceof StackEditor editor) {
            editor.page().editPitch();
        }
        return null;
    }
}
