// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor;

import org.eclipse.ui.IActionBars;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.part.EditorActionBarContributor;

/** Puts the active editor's actions behind the Edit menu. */
public final class StackContributor extends EditorActionBarContributor {
    @Override
    public void setActiveEditor(IEditorPart part) {
        IActionBars bars = getActionBars();
        for (String id : EditorActions.ids()) {
            bars.setGlobalActionHandler(id, part instanceof StackEditor editor ? editor.action(id) : null);
        }
        bars.updateActionBars();
        // Editors of one kind share the line, so that it still speaks of the one before.
        if (part instanceof StackEditor editor) {
            editor.tellStatus();
        }
    }
}
