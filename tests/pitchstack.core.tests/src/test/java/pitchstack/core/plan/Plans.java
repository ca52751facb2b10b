// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Setting;

/** Short ways to ask a planner. */
final class Plans {
    private Plans() { }

    /** Plans from all indices 0, avoiding worn teeth. */
    static Answer plan(AxisSpec axis, long target, long tolerance) {
        return Planner.of(axis).plan(request(axis, target, tolerance, 0));
    }

    static PlanRequest request(AxisSpec axis, long target, long tolerance, int alternatives) {
        return new PlanRequest(target, tolerance, Setting.zero(axis.stages().size()), WornPolicy.AVOID, alternatives);
    }

    static Answer.Reached reached(Answer answer) {
        return assertInstanceOf(Answer.Reached.class, answer);
    }

    static Answer.Nearest nearest(Answer answer) {
        return assertInstanceOf(Answer.Nearest.class, answer);
    }

    static void assertPlanned(List<Integer> setting, long effortMs, long error, PlannedSetting planned) {
        assertEquals(setting, planned.setting().toList());
        assertEquals(effortMs, planned.effortMs());
        assertEquals(error, planned.error());
    }

    static boolean isReached(Planner planner, long target) {
        return planner.plan(request(planner.axis(), target, 0, 0)) instanceof Answer.Reached;
    }

    /** The reachable positions in order, from the first at or above a place up to a place, both included. */
    static List<Long> positions(Planner planner, long from, long to) {
        List<Long> positions = new ArrayList<>();
        Optional<Long> next = atOrAbove(planner, from);
        while (next.isPresent() && next.get() <= to) {
            positions.add(next.get());
            next = atOrAbove(planner, next.get() + 1);
        }
        return positions;
    }

    private static Optional<Long> atOrAbove(Planner planner, long place) {
        Answer answer = planner.plan(request(planner.axis(), place, 0, 0));
        return answer instanceof Answer.Nearest nearest ? nearest.above().map(PlannedSetting::position)
                : Optional.of(place);
    }
}
