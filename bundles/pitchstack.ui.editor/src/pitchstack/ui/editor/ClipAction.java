// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor;

import java.util.Optional;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.ui.actions.ActionFactory;
import pitchstack.edit.PasteStages;
import pitchstack.edit.RemoveElement;
import pitchstack.edit.Session;
import pitchstack.model.Axis;
import pitchstack.model.Stage;
import pitchstack.model.file.StackFileException;
import pitchstack.model.file.StagesText;
import pitchstack.ui.editor.palette.Placing;
import pitchstack.ui.editor.parts.Elements;

/** Cuts or copies the selected stage, or pastes one on it, within a file and between files. */
final class ClipAction extends Action {
    private final StackEditor editor;
    private final ActionFactory kind;

    /** @param kind {@link ActionFactory#CUT}, {@link ActionFactory#COPY} or {@link ActionFactory#PASTE} */
    ClipAction(StackEditor editor, ActionFactory kind, String text) {
        super(text);
        this.editor = editor;
        this.kind = kind;
        setId(kind.getId());
        setActionDefinitionId(kind.getCommandId());
        setEnabled(kind == ActionFactory.PASTE);
    }

    private Session session() {
        return editor.session();
    }

    private Optional<EObject> selected() {
        return Elements.selected(editor.getSite().getPage().getSelection())
                .filter(element -> element.eResource() == session().document());
    }

    void update() {
        // Asking the clipboard at every change of the selection would wait for other programs.
        setEnabled(kind == ActionFactory.PASTE || selected().flatMap(Elements::stage).isPresent());
    }

    @Override
    public void run() {
        try {
            if (kind == ActionFactory.PASTE) {
                paste();
                return;
            }
            Stage stage = selected().flatMap(Elements::stage).orElse(null);
            if (stage != null) {
                StageClipboard.put(stage);
                if (kind == ActionFactory.CUT) {
                    session().run(new RemoveElement(stage));
                }
            }
        } catch (StackFileException e) {
            tell(e.getMessage());
        }
    }

    private void paste() {
        Optional<String> text = StageClipboard.text();
        if (text.isEmpty()) {
            tell("There is nothing to paste. Copy a stage first, here or in another file.");
            return;
        }
        try {
            Axis axis = selected().flatMap(Elements::axis).orElse(session().axis());
            int position = Placing.above(axis, selected().flatMap(Elements::stage).stream().mapToInt(Elements::number)
                    .findFirst());
            PasteStages edit = PasteStages.of(axis, position, StagesText.read(text.get()));
            session().run(edit);
            editor.page().selection().setSelection(new StructuredSelection(edit.stages().get(edit.stages().size() - 1)));
        } catch (StackFileException notStages) {
            tell("What was copied last is no stage. Copy a stage first, here or in another file.");
        }
    }

    private void tell(String sentence) {
        MessageDialog.openInformation(editor.getSite().getShell(), "Nothing was changed", sentence);
    }
}
