// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor;

import java.util.Map;
import org.eclipse.gef.ui.actions.RedoAction;
import org.eclipse.gef.ui.actions.UndoAction;
import org.eclipse.jface.action.IAction;
import org.eclipse.ui.IActionBars;
import org.eclipse.ui.actions.ActionFactory;

/** The actions behind the Edit menu while an editor, or its outline, is active. */
final class EditorActions {
    private final UndoAction undo;
    private final RedoAction redo;
    private final DeleteElement delete;
    private final Map<String, IAction> byId;

    EditorActions(StackEditor editor) {
        undo = new UndoAction(editor);
        redo = new RedoAction(editor);
        delete = new DeleteElement(editor.session(), editor.getEditorSite());
        byId = Map.of(ActionFactory.UNDO.getId(), undo, ActionFactory.REDO.getId(), redo,
                ActionFactory.DELETE.getId(), delete);
    }

    IAction delete() {
        return delete;
    }

    IAction of(String id) {
        return byId.get(id);
    }

    /** Puts these actions behind the menu. */
    void register(IActionBars bars) {
        byId.forEach(bars::setGlobalActionHandler);
        bars.updateActionBars();
    }

    /** Takes up a change of the history or of the selection. */
    void update() {
        undo.update();
        redo.update();
        delete.update();
    }

    void dispose() {
        undo.dispose();
        redo.dispose();
    }
}
