// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor;

import java.util.List;
import java.util.Optional;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.ui.actions.ActionFactory;
import pitchstack.edit.MarkText;
import pitchstack.edit.MarkText.Fits;
import pitchstack.edit.MarkText.Pasted;
import pitchstack.edit.MarkText.Refused;
import pitchstack.edit.PasteStages;
import pitchstack.edit.RemoveElement;
import pitchstack.edit.Session;
import pitchstack.model.Axis;
import pitchstack.model.Stage;
import pitchstack.model.Target;
import pitchstack.model.WornRange;
import pitchstack.model.file.StackFileException;
import pitchstack.model.file.StagesText;
import pitchstack.ui.editor.palette.Placing;
import pitchstack.ui.editor.parts.Elements;

/** Cuts, copies or pastes a stage, a target or marked teeth, within a file and between files. */
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

    /** What is cut or copied: a target, marked teeth, or the stage that is selected or has the selected row. */
    private Optional<EObject> copied() {
        return selected().flatMap(element -> element instanceof Target || element instanceof WornRange
                ? Optional.of(element) : Elements.stage(element).map(EObject.class::cast));
    }

    void update() {
        // Asking the clipboard at every change of the selection would wait for other programs.
        setEnabled(kind == ActionFactory.PASTE || copied().isPresent());
    }

    @Override
    public void run() {
        if (kind == ActionFactory.PASTE) {
            StackClipboard.text().ifPresentOrElse(this::paste, () -> tell("There is nothing to paste. Copy a stage, a target or"
                    + " marked teeth first, here or in another file."));
            return;
        }
        copied().ifPresent(this::copy);
    }

    private void copy(EObject element) {
        try {
            StackClipboard.put(text(element));
        } catch (StackFileException e) {
            tell(e.getMessage());
            return;
        }
        if (kind == ActionFactory.CUT) {
            session().run(new RemoveElement(element));
        }
    }

    private String text(EObject element) throws StackFileException {
        if (element instanceof Target target) {
            return MarkText.of(target, session().analysis((Axis) target.eContainer()).spec().scale());
        }
        return element instanceof WornRange range ? MarkText.of(range) : StagesText.write(List.of((Stage) element));
    }

    private void paste(String text) {
        Axis axis = selected().flatMap(Elements::axis).orElse(session().axis());
        Optional<Pasted> mark = MarkText.paste(text, axis, session().analysis(axis).spec().scale(),
                selected().flatMap(Elements::row));
        if (mark.isEmpty()) {
            pasteStages(text, axis);
        } else if (mark.get() instanceof Fits fits) {
            session().run(fits.edit());
            select(fits.into().get(fits.into().size() - 1));
        } else {
            tell(((Refused) mark.get()).why());
        }
    }

    private void pasteStages(String text, Axis axis) {
        try {
            int position = Placing.above(axis, selected().flatMap(Elements::stage).stream().mapToInt(Elements::number)
                    .findFirst());
            PasteStages edit = PasteStages.of(axis, position, StagesText.read(text));
            session().run(edit);
            select(edit.stages().get(edit.stages().size() - 1));
        } catch (StackFileException notStages) {
            tell("What was copied last is no stage, target or marked teeth. Copy one first, here or in another file.");
        }
    }

    private void select(EObject element) {
        editor.page().selection().setSelection(new StructuredSelection(element));
    }

    private void tell(String sentence) {
        MessageDialog.openInformation(editor.getSite().getShell(), "Nothing was changed", sentence);
    }
}
