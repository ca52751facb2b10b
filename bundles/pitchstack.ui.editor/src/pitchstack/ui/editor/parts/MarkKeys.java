// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.eclipse.gef.EditPart;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.plan.Answer;
import pitchstack.core.plan.PlanRequest;
import pitchstack.core.plan.PlannedSetting;
import pitchstack.core.plan.Planner;
import pitchstack.core.plan.WornPolicy;
import pitchstack.core.units.RulerStep;
import pitchstack.core.units.Scale;

/** Selects and moves position 0, the stops and the targets on the ruler without the mouse. */
final class MarkKeys {
    /** A mark this part of a tick off a tick stands on it. */
    private static final double ON_TICK = 1e-6;

    private final StackViewer viewer;

    MarkKeys(StackViewer viewer) {
        this.viewer = viewer;
    }

    /** Selects the next mark to the right (1) or to the left (−1) of the selected one; round again after the last. */
    void select(int by) {
        List<Sliding> marks = ((List<?>) viewer.getContents().getChildren()).stream().filter(Sliding.class::isInstance)
                .map(Sliding.class::cast).filter(mark -> mark.position().isPresent())
                .sorted(Comparator.comparingLong(mark -> mark.position().getAsLong())).toList();
        if (!marks.isEmpty()) {
            int at = viewer.selectedMark().map(marks::indexOf).orElse(by > 0 ? -1 : 0);
            EditPart next = marks.get(Math.floorMod(at + by, marks.size()));
            viewer.select(next);
            viewer.reveal(next);
        }
    }

    /**
     * Moves the selected mark.
     *
     * @param steps small ticks of the ruler, or positions in reach; below 0 to the left
     * @param inReach whether it goes from one position in reach to the next
     * @return whether a mark is selected
     */
    boolean nudge(int steps, boolean inReach) {
        Optional<Sliding> mark = viewer.selectedMark();
        mark.ifPresent(moved -> moved.position().ifPresent(from -> {
            OptionalLong to = inReach ? reached(from, steps) : OptionalLong.of(tick(from, steps));
            long position = moved.allowed(to.orElse(from));
            if (position != from) {
                viewer.view().session().run(moved.movedTo(position));
                viewer.reveal(moved);
            }
        }));
        return mark.isPresent();
    }

    /** From where there is no tick, the first step goes to the next one. */
    private long tick(long from, int steps) {
        RulerStep step = viewer.view().scene().ruler();
        double tick = step.counts() / step.parts();
        double at = from / tick;
        double to = steps > 0 ? Math.floor(at + ON_TICK) + steps : Math.ceil(at - ON_TICK) + steps;
        return Math.round(to * tick);
    }

    private OptionalLong reached(long from, int steps) {
        AxisAnalysis analysis = viewer.view().session().analysis();
        OptionalLong at = OptionalLong.of(from);
        for (int step = 0; step < Math.abs(steps) && at.isPresent() && analysis.planner().isPresent(); step++) {
            at = next(analysis, at.getAsLong(), Integer.signum(steps));
        }
        return at;
    }

    private static OptionalLong next(AxisAnalysis analysis, long from, int sign) {
        Planner planner = analysis.planner().orElseThrow();
        Scale scale = planner.axis().scale();
        Answer answer = planner.plan(new PlanRequest(scale.wrap(from + sign), 0, analysis.current(), WornPolicy.ALLOW, 0));
        Optional<PlannedSetting> found = answer instanceof Answer.Reached reached ? Optional.of(reached.best())
                : sign > 0 ? ((Answer.Nearest) answer).above() : ((Answer.Nearest) answer).below();
        return found.stream().mapToLong(PlannedSetting::position).findFirst();
    }
}
