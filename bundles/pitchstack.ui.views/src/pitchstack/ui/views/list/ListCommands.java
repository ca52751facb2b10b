// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.list;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.ui.IActionBars;

/** What can be done with the list, in the menus of the view and the table, and by keys while the table has the focus. */
final class ListCommands {
    private static final int KEYPAD_ENTER = SWT.KEYPAD_CR;

    private final ListPlanning planning;
    private final StopChoice choice;
    private final ListEdits edits;
    private final CellEntry entry;
    private final ListTexts texts;
    private final ListFiles files;
    private final Table table;
    private final List<Command> commands = new ArrayList<>();

    private record Command(IAction action, int key, BooleanSupplier possible) { }

    ListCommands(ListPlanning planning, StopChoice choice, ListEdits edits, CellEntry entry) {
        this.planning = planning;
        this.choice = choice;
        this.edits = edits;
        this.entry = entry;
        this.texts = new ListTexts(planning, edits);
        this.files = new ListFiles(planning, texts);
        table = planning.page().table().table();
        define();
        table.addListener(SWT.KeyDown, this::pressed);
        MenuManager menu = new MenuManager();
        menu.setRemoveAllWhenShown(true);
        menu.addMenuListener(this::fill);
        table.setMenu(menu.createContextMenu(table));
    }

    /** Puts all into the menu of the view, and what is wanted first on its tool bar. */
    void addTo(IActionBars bars) {
        bars.getMenuManager().setRemoveAllWhenShown(true);
        bars.getMenuManager().addMenuListener(this::fill);
        bars.getMenuManager().add(new Separator());
        bars.getToolBarManager().add(plain("Import…", "Adds the targets of a CSV file", files::read));
        bars.getToolBarManager().add(plain("Export…", "Writes the plan as a CSV file", files::writePlan));
    }

    private void define() {
        BooleanSupplier any = this::isAnySelected;
        BooleanSupplier sortedByList = () -> isAnySelected() && !planning.page().table().isInTurn();
        command("&Apply", SWT.MOD1 | SWT.CR, choice::canApply, choice::apply);
        command("Apply and &Next", SWT.MOD1 | SWT.MOD2 | SWT.CR, () -> planning.plan().isPresent(), choice::applyAndNext);
        command("Plan from &Here", 0, () -> true, planning::begin);
        command("Plan A&gain", SWT.F5, () -> true, planning::refresh);
        command("S&how in Drawing", 0, any, choice::reveal);
        separator();
        command("&Edit", SWT.F2, () -> true, () -> entry.begin(Math.max(0, table.getSelectionIndex()), null));
        command("Add &Target", SWT.INSERT, () -> true, () -> entry.begin(table.getItemCount() - 1, null));
        command("&Duplicate", SWT.MOD1 | 'D', any, edits::duplicate);
        command("De&lete", SWT.DEL, any, edits::delete);
        command("Move &Up", SWT.MOD3 | SWT.ARROW_UP, sortedByList, () -> edits.move(false));
        command("Move Do&wn", SWT.MOD3 | SWT.ARROW_DOWN, sortedByList, () -> edits.move(true));
        command("Put in the &Order of the Moves", 0, () -> planning.plan().isPresent(), edits::takeOverTurns);
        separator();
        command("&Copy with Answers", SWT.MOD1 | 'C', any, texts::copy);
        command("&Paste", SWT.MOD1 | 'V', () -> true, texts::paste);
        command("&Select All", SWT.MOD1 | 'A', () -> true, this::selectAll);
        separator();
        command("&Import CSV…", 0, () -> true, files::read);
        command("Export P&lan as CSV…", 0, () -> planning.plan().isPresent(), files::writePlan);
        command("Export Targets as CS&V…", 0, () -> !planning.listing().entries().isEmpty(), files::writeTargets);
    }

    private void command(String text, int key, BooleanSupplier possible, Runnable what) {
        Action action = plain(text, null, what);
        action.setAccelerator(key);
        commands.add(new Command(action, key, possible));
    }

    private void separator() {
        commands.add(null);
    }

    private Action plain(String text, String tooltip, Runnable what) {
        Action action = new Action(text) {
            @Override
            public void run() {
                what.run();
            }
        };
        action.setToolTipText(tooltip);
        return action;
    }

    private boolean isAnySelected() {
        return !planning.page().table().selected().isEmpty();
    }

    private void selectAll() {
        planning.page().table().select(planning.listing().entries().stream().map(Listing.Entry::target).toList());
        choice.show();
    }

    private void fill(IMenuManager menu) {
        for (Command command : commands) {
            if (command == null) {
                menu.add(new Separator());
            } else {
                command.action().setEnabled(command.possible().getAsBoolean());
                menu.add(command.action());
            }
        }
    }

    private void pressed(Event e) {
        int modifiers = e.stateMask & SWT.MODIFIER_MASK;
        int code = e.keyCode == KEYPAD_ENTER ? SWT.CR : Character.toUpperCase(e.keyCode);
        for (Command command : commands) {
            if (command != null && command.key() != 0 && command.key() == (modifiers | code)) {
                e.doit = false;
                if (command.possible().getAsBoolean()) {
                    command.action().run();
                }
                return;
            }
        }
        if (modifiers == 0 && code == SWT.CR) {
            e.doit = false;
            entry.begin(Math.max(0, table.getSelectionIndex()), null);
        } else if (e.character == SWT.ESC) {
            planning.stop();
        } else if ((modifiers & ~SWT.MOD2) == 0 && e.character > ' ' && e.character != SWT.DEL) {
            e.doit = false;
            entry.begin(Math.max(0, table.getSelectionIndex()), String.valueOf(e.character));
        }
    }
}
