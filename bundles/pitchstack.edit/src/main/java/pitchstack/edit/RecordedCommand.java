// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.edit.command.ChangeCommand;

/** An edit on the command stack: its changes are recorded as they happen, and undone and redone from the record. */
final class RecordedCommand extends ChangeCommand {
    private final Edit edit;

    RecordedCommand(Resource document, Edit edit) {
        super(document);
        this.edit = edit;
        setLabel(edit.label());
    }

    @Override
    protected void doExecute() {
        edit.apply();
    }
}
