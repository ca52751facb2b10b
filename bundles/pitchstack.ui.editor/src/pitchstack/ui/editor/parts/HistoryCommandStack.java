// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import java.util.EventObject;
import java.util.function.Consumer;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.common.command.CommandStackListener;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.commands.CommandStack;
import pitchstack.edit.Session;

/** The session's one history, as GEF's tools and actions see it. It keeps no commands of its own. */
public final class HistoryCommandStack extends CommandStack {
    private final Session session;
    private final CommandStackListener forward = (EventObject event) -> notifyListeners();
    private Consumer<EObject> added = element -> { };

    /** @param selecting selects what an edit has added */
    public void onAdded(Consumer<EObject> selecting) {
        added = selecting;
    }

    /** @param session the session whose history this is, until {@link #dispose} */
    public HistoryCommandStack(Session session) {
        this.session = session;
        session.history().addCommandStackListener(forward);
    }

    /** Runs an edit; any other kind of command would leave the history of the document, and is refused. */
    @Override
    public void execute(Command command) {
        if (command == null || !command.canExecute()) {
            return;
        }
        if (!(command instanceof EditCommand wrapped)) {
            throw new IllegalArgumentException("Only edits change a document, not " + command);
        }
        session.run(wrapped.edit());
        wrapped.added().ifPresent(added);
    }

    @Override
    public boolean canUndo() {
        return session.history().canUndo();
    }

    @Override
    public boolean canRedo() {
        return session.history().canRedo();
    }

    @Override
    public void undo() {
        session.history().undo();
    }

    @Override
    public void redo() {
        session.history().redo();
    }

    /** A command with the label of what would be undone; {@code null} if there is nothing. */
    @Override
    public Command getUndoCommand() {
        return canUndo() ? new Command(session.history().getUndoCommand().getLabel()) { } : null;
    }

    /** A command with the label of what would be done again; {@code null} if there is nothing. */
    @Override
    public Command getRedoCommand() {
        return canRedo() ? new Command(session.history().getRedoCommand().getLabel()) { } : null;
    }

    @Override
    public boolean isDirty() {
        return session.isDirty();
    }

    @Override
    public void dispose() {
        session.history().removeCommandStackListener(forward);
        super.dispose();
    }
}
