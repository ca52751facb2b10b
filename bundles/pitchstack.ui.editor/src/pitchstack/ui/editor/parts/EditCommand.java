// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import java.util.Optional;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.gef.commands.Command;
import pitchstack.edit.Edit;

/** An edit on its way through GEF to the history of the document. */
public final class EditCommand extends Command {
    private final Edit edit;
    private final EObject added;

    /** @param edit the edit that the {@link HistoryCommandStack} is to run */
    public EditCommand(Edit edit) {
        this(edit, null);
    }

    /**
     * @param edit the edit that the {@link HistoryCommandStack} is to run
     * @param added what is to be selected afterwards, or {@code null}
     */
    public EditCommand(Edit edit, EObject added) {
        super(edit.label());
        this.edit = edit;
        this.added = added;
    }

    Edit edit() {
        return edit;
    }

    Optional<EObject> added() {
        return Optional.ofNullable(added);
    }
}
