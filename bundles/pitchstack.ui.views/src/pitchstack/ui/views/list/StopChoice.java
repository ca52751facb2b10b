// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.list;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import pitchstack.core.plan.Leg;
import pitchstack.core.plan.PlannedSetting;
import pitchstack.core.stack.Setting;
import pitchstack.edit.ApplySetting;
import pitchstack.edit.Session;
import pitchstack.model.Target;

/** The selected target: its steps are shown, its setting is previewed in the drawing while the view is used, and set. */
final class StopChoice {
    private final ListPlanning planning;
    private final ListTable table;
    private final StopPane pane;
    private final Consumer<Target> reveal;
    private boolean used;
    private boolean previewing;

    /** @param reveal called with a target that shall be shown in the drawing */
    StopChoice(ListPlanning planning, Consumer<Target> reveal) {
        this.reveal = reveal;
        this.planning = planning;
        this.table = planning.page().table();
        this.pane = planning.page().steps();
        table.table().addListener(SWT.Selection, e -> show());
        pane.onApply(this::applyShown);
        pane.onNext(this::applyAndNext);
    }

    /** Says whether the view is the one that is used; only then does it preview anything. */
    void setUsed(boolean now) {
        used = now;
        preview();
    }

    /** Shows the selected target as it is now. */
    void show() {
        List<Target> selected = table.selected();
        Optional<ListPlan> plan = planning.plan();
        if (selected.size() != 1) {
            pane.say(selected.isEmpty() ? planning.listing().entries().isEmpty() ? ""
                    : "Select a target, and the steps to it are shown here." : selected.size() + " targets are selected.");
        } else if (plan.isEmpty()) {
            pane.outdate();
        } else if (plan.get().leg(selected.get(0)).isPresent()) {
            pane.show(selected.get(0), plan.get(), planning.session().analysis().current());
        } else {
            pane.say(planning.listing().entries().stream().filter(entry -> entry.target() == selected.get(0)).findFirst()
                    .map(Listing.Entry::problem).orElse(""));
        }
        preview();
    }

    private Optional<Target> only() {
        List<Target> selected = table.selected();
        return selected.size() == 1 ? Optional.of(selected.get(0)) : Optional.empty();
    }

    /** Selects the selected target in the drawing. */
    void reveal() {
        table.selected().stream().findFirst().ifPresent(reveal);
    }

    private Optional<PlannedSetting> move() {
        return planning.plan().flatMap(plan -> only().flatMap(plan::leg)).flatMap(Leg::move);
    }

    /** While it is planned again, what was previewed stays, so that the drawing does not jump to and fro. */
    private void preview() {
        Session session = planning.session();
        if (session == null || used && planning.plan().isEmpty() && previewing) {
            return;
        }
        Setting now = session.analysis().current();
        Optional<Setting> wanted = used ? move().map(PlannedSetting::setting).filter(setting -> !setting.equals(now))
                : Optional.empty();
        if (wanted.isPresent() || previewing) {
            previewing = wanted.isPresent();
            if (!session.preview().equals(wanted)) {
                session.preview(wanted.orElse(null));
            }
        }
    }

    /** Whether there is a setting to apply. */
    boolean canApply() {
        return move().isPresent();
    }

    /** Moves the stages to the setting of the selected target. */
    void apply() {
        move().ifPresent(move -> planning.apply(only().orElseThrow(), move.setting()));
    }

    /** A neighbour of a target that is not reached belongs to no stop of the plan. */
    private void applyShown(PlannedSetting shown) {
        if (move().isPresent()) {
            apply();
        } else {
            planning.session().run(new ApplySetting(planning.session().axis(), shown.setting()));
        }
    }

    /** The same, and selects the next target that is moved to; selects the first where none is selected. */
    void applyAndNext() {
        Target target = only().orElse(null);
        Optional<Target> next = planning.plan().flatMap(plan -> plan.after(target));
        if (target != null) {
            apply();
        }
        next.ifPresent(one -> table.reveal(table.row(one)));
        show();
    }
}
