// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views;

import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CommandStack;
import org.eclipse.jface.action.Action;
import org.eclipse.ui.IActionBars;
import org.eclipse.ui.actions.ActionFactory;
import pitchstack.edit.Session;

/** Undo and Redo of the document in front, for the menu and the keys while a view is active. */
public final class HistoryActions {
    private final ActiveSession active;
    private final HistoryAction undo = new HistoryAction("&Undo", CommandStack::canUndo, CommandStack::getUndoCommand,
            CommandStack::undo);
    private final HistoryAction redo = new HistoryAction("&Redo", CommandStack::canRedo, CommandStack::getRedoCommand,
            CommandStack::redo);

    /**
     * Puts the actions behind the menu.
     *
     * @param active gives the document
     * @param bars the bars of the view
     */
    public HistoryActions(ActiveSession active, IActionBars bars) {
        this.active = active;
        bars.setGlobalActionHandler(ActionFactory.UNDO.getId(), undo);
        bars.setGlobalActionHandler(ActionFactory.REDO.getId(), redo);
        bars.updateActionBars();
        update();
    }

    /** Takes up a change of the document or of which one is in front. */
    public void update() {
        undo.update();
        redo.update();
    }

    private final class HistoryAction extends Action {
        private final String name;
        private final Predicate<CommandStack> can;
        private final Function<CommandStack, Command> next;
        private final Consumer<CommandStack> act;

        HistoryAction(String name, Predicate<CommandStack> can, Function<CommandStack, Command> next,
                Consumer<CommandStack> act) {
            super(name);
            this.name = name;
            this.can = can;
            this.next = next;
            this.act = act;
        }

        void update() {
            CommandStack history = active.session().map(Session::history).orElse(null);
            boolean possible = history != null && can.test(history);
            setEnabled(possible);
            setText(possible ? name + " " + next.apply(history).getLabel() : name);
        }

        @Override
        public void run() {
            active.session().map(Session::history).filter(can).ifPresent(act);
        }
    }
}
