// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor;

import java.util.List;
import org.eclipse.ui.IActionBars;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.part.EditorActionBarContributor;

/** Puts the active editor's actions behind Undo, Redo and Delete. */
public final class StackContributor extends EditorActionBarContributor {
    private static final List<ActionFactory> ACTIONS = List.of(ActionFactory.UNDO, ActionFactory.REDO, ActionFactory.DELETE);

    @Override
    public void setActiveEditor(IEditorPart part) {
        IActionBars bars = getActionBars();
        for (ActionFactory factory : ACTIONS) {
            bars.setGlobalActionHandler(factory.getId(),
                    part instanceof StackEditor editor ? editor.action(factory.getId()) : null);
        }
        bars.updateActionBars();
        // Editors of one kind share the line, so that it still speaks of the one before.
        if (part instanceof StackEditor editor) {
            editor.tellStatus();
        }
    }
}
