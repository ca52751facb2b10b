// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import org.eclipse.gef.commands.Command;
import pitchstack.edit.Edit;

/** An edit on its way through GEF to the history of the document. */
public final class EditCommand extends Command {
    private final Edit edit;

    /** @param edit the edit that the {@link HistoryCommandStack} is to run */
    public EditCommand(Edit edit) {
        super(edit.label());
        this.edit = edit;
    }

    Edit edit() {
        return edit;
    }
}
