// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
    private final List<ClipAction> clips;
    private final Map<String, IAction> byId;

    EditorActions(StackEditor editor) {
        undo = new UndoAction(editor);
        redo = new RedoAction(editor);
        delete = new DeleteElement(editor.session(), editor.getEditorSite(), editor::selectedStop);
        clips = List.of(new ClipAction(editor, ActionFactory.CUT, "Cu&t"),
                new ClipAction(editor, ActionFactory.COPY, "&Copy"), new ClipAction(editor, ActionFactory.PASTE, "&Paste"));
        byId = Stream.concat(Stream.of(undo, redo, delete), clips.stream())
                .collect(Collectors.toMap(IAction::getId, Function.identity()));
    }

    /** Those for a context menu, besides undo and redo. */
    List<IAction> onElements() {
        return Stream.<IAction>concat(clips.stream(), Stream.of(delete)).toList();
    }

    /** The ids of all the actions. */
    static List<String> ids() {
        return Stream.of(ActionFactory.UNDO, ActionFactory.REDO, ActionFactory.CUT, ActionFactory.COPY, ActionFactory.PASTE,
                ActionFactory.DELETE).map(ActionFactory::getId).toList();
    }

    IAction of(String id) {
        return byId.get(id);
    }

    /** Puts these actions behind the menu. */
    void register(IActionBars bars) {
        byId.forEach(bars::setGlobalActionHandler);
        bars.updateActionBars();
    }

    /** Takes these actions from behind the menu, so that their keys belong to a field in which something is typed. */
    void release(IActionBars bars) {
        byId.keySet().forEach(id -> bars.setGlobalActionHandler(id, null));
        bars.updateActionBars();
    }

    /** Takes up a change of the history or of the selection. */
    void update() {
        undo.update();
        redo.update();
        delete.update();
        clips.forEach(ClipAction::update);
    }

    void dispose() {
        undo.dispose();
        redo.dispose();
    }
}
