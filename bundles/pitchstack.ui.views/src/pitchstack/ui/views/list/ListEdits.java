// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.list;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import pitchstack.core.units.QuantityException;
import pitchstack.core.units.Scale;
import pitchstack.edit.AddElement;
import pitchstack.edit.AddTargets;
import pitchstack.edit.ArrangeTargets;
import pitchstack.edit.Properties;
import pitchstack.edit.Property;
import pitchstack.edit.Property.Entry;
import pitchstack.edit.RemoveTargets;
import pitchstack.edit.Session;
import pitchstack.edit.TypedText;
import pitchstack.model.Axis;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Target;

/** What a person does to the list, each as one change that can be taken back. */
final class ListEdits {
    private final ListPlanning planning;
    private final ListTable table;

    ListEdits(ListPlanning planning) {
        this.planning = planning;
        this.table = planning.page().table();
    }

    private Session session() {
        return planning.session();
    }

    private Axis axis() {
        return session().axis();
    }

    /** Takes what was typed in a cell; says why not where it cannot be taken. See {@link CellEntry.Taker}. */
    Optional<Target> take(Target target, Column column, String typed) {
        Target of = target != null ? target : PitchstackFactory.eINSTANCE.createTarget();
        Entry entry = target != null ? property(of, column).enter(spelled(column, typed)) : newTarget(of, typed);
        if (entry instanceof Entry.Refused refused) {
            planning.page().problem(refused.sentence() + " Correct it, or press Escape to leave it as it was.");
            return Optional.empty();
        }
        planning.page().problem("");
        session().run(((Entry.Accepted) entry).edit());
        return Optional.of(of);
    }

    private Property property(Target target, Column column) {
        String id = column.feature().orElseThrow().getName();
        return Properties.of(session(), target).stream().filter(p -> p.id().equals(id)).findFirst().orElseThrow();
    }

    private Scale scale() {
        return session().analysis().spec().scale();
    }

    /** A length is kept with the unit that was meant. */
    private String spelled(Column column, String typed) {
        boolean length = column == Column.POSITION || column == Column.TOLERANCE;
        try {
            return length && !typed.isBlank() ? TypedText.withUnit(typed, scale()) : typed;
        } catch (QuantityException unreadable) {
            // The property refuses it with the sentence that is shown.
            return typed;
        }
    }

    private Entry newTarget(Target target, String typed) {
        try {
            target.setPosition(TypedText.withUnit(typed, scale()));
            scale().parse(target.getPosition());
            return new Entry.Accepted(new AddElement<>(axis().getTargets(), axis().getTargets().size(), target,
                    "Add target at " + target.getPosition()));
        } catch (QuantityException e) {
            return new Entry.Refused(e.getMessage());
        }
    }

    /** Adds targets behind the selected ones, or at the end, and selects them. */
    void add(List<Target> targets, String label) {
        List<Target> selected = table.selected();
        int at = selected.stream().mapToInt(axis().getTargets()::indexOf).max().orElse(axis().getTargets().size() - 1) + 1;
        session().run(new AddTargets(axis(), at, targets, label));
        show(targets);
    }

    /** Copies the selected targets, each copy behind the last of them. */
    void duplicate() {
        List<Target> copies = table.selected().stream().map(EcoreUtil::copy).toList();
        add(copies, copies.size() == 1 ? "Duplicate target" : "Duplicate " + copies.size() + " targets");
    }

    /** Deletes the selected targets, and selects what comes to stand in their place. */
    void delete() {
        List<Target> selected = table.selected();
        int row = table.row(selected.get(0));
        session().run(new RemoveTargets(selected));
        table.reveal(Math.min(row, Math.max(0, axis().getTargets().size() - 1)));
        table.table().notifyListeners(SWT.Selection, new Event());
    }

    /** Moves the selected targets by one place, where they do not stand at the end. */
    void move(boolean down) {
        ArrangeTargets edit = ArrangeTargets.byOne(axis(), table.selected(), down);
        if (!edit.isIdle()) {
            session().run(edit);
            table.table().showSelection();
        }
    }

    /** Puts the list into the order of the moves. */
    void takeOverTurns() {
        planning.plan().ifPresent(plan -> {
            List<Target> order = new ArrayList<>(plan.inTurn());
            axis().getTargets().stream().filter(target -> !order.contains(target)).forEach(order::add);
            ArrangeTargets edit = new ArrangeTargets(axis(), order, "Put targets in the order of the moves");
            if (!edit.isIdle()) {
                session().run(edit);
            }
        });
    }

    private void show(List<Target> targets) {
        table.select(targets);
        table.table().showSelection();
        table.table().notifyListeners(SWT.Selection, new Event());
    }
}
