// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pitchstack.core.Stacks.MM;
import static pitchstack.core.Stacks.UM;
import static pitchstack.core.Stacks.axis;
import static pitchstack.core.Stacks.stage;
import static pitchstack.core.Stacks.withLimits;
import static pitchstack.core.Stacks.withStops;
import static pitchstack.core.plan.Plans.assertPlanned;
import static pitchstack.core.plan.Plans.nearest;
import static pitchstack.core.plan.Plans.plan;
import static pitchstack.core.plan.Plans.reached;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.ShiftLimit;
import pitchstack.core.stack.StageSpec;

/**
 * The cases of the planning study, each found there by brute force: a 2.54 mm rack of 1000 indices with a 5 mm and a
 * 4.9 mm stage of 20 indices each, at most 15 mm out of line.
 *
 * <p>The study counts the upper fine stage backwards, position = 2.54·r + 5·a − 4.9·b. Here pitches are positive, so
 * that stage stands at index c = −b: a study range of b from −10 to 9 is c from −9 to 10, and the study's b = 7 is
 * c = −7. The study names the number of indices but not their ends; a and b from −10 to 9 give its 115 ways within
 * 15 mm, 115 000 settings, 106 090 positions and ends, as the last case shows.
 *
 * <p>The study keeps the 15 mm at the end of a move only. Here they are kept after each step, so that to get from (0, 0) to
 * (4, −7) the upper stage must go −3 (−14.7 mm), the lower 4 (5.3 mm), the upper −4 (−14.3 mm): one release more than the
 * study counts. To (6, −8) it takes two more: 30 mm or 39.2 mm in one step would pass the whole band of 30 mm.
 */
final class StudiedRackTest {
    private static final EffortCost RACK_COST = new EffortCost(4, 1);
    private static final EffortCost FINE_COST = new EffortCost(2, 1);
    /** To release a fine stage once more. */
    private static final long RELEASE = 2;
    private static final AxisSpec RACK = withLimits(axis(stage("rack", 254 * MM / 100, 0, 999, RACK_COST),
            stage("lower fine", 5 * MM, -10, 9, FINE_COST), stage("upper fine", 49 * MM / 10, -9, 10, FINE_COST)),
            new ShiftLimit(1, 2, 15 * MM));

    @Test
    void case1ReachesAWholeTarget() {
        assertPlanned(List.of(45, 4, -7), 64 + RELEASE, 0, reached(plan(RACK, 100 * MM, 0)).best());
    }

    @Test
    void listsTheStepsByWhichAPairKeepsItsLimit() {
        assertEquals(List.of(new Step(0, 0, 45), new Step(2, 0, -3, Step.Kind.PARTWAY), new Step(1, 0, 4),
                new Step(2, -3, -7)), reached(plan(RACK, 100 * MM, 0)).best().steps());
    }

    @Test
    void case2CountsTheEdgeOfTheToleranceAsReached() {
        long target = 100 * MM + 10 * UM;
        assertPlanned(List.of(45, 4, -7), 64 + RELEASE, -10 * UM, reached(plan(RACK, target, 10 * UM)).best());
    }

    @Test
    void case3DoesNotReachAFemtometreInsideTheEdge() {
        Answer.Nearest answer = nearest(plan(RACK, 100 * MM + 10 * UM, 10 * UM - 1));
        assertPlanned(List.of(45, 4, -7), 64 + RELEASE, -10 * UM, answer.below().orElseThrow());
        assertPlanned(List.of(43, 6, -8), 65 + 2 * RELEASE, 10 * UM, answer.above().orElseThrow());
        assertEquals(Reason.BETWEEN_STEPS, answer.reason());
    }

    @Test
    void case4LeavesAStageAlone() {
        assertPlanned(List.of(400, 0, -3), 409, 0, reached(plan(RACK, 1001 * MM + 300 * UM, 10 * UM)).best());
    }

    @Test
    void case5PutsThePositionBelowFirst() {
        AxisSpec pair = axis(stage("lower", 1000, 0, 5, FINE_COST), stage("upper", 990, -1, 1, FINE_COST));
        Answer.Reached answer = reached(Planner.of(pair).plan(Plans.request(pair, 995, 5, 1)));
        assertPlanned(List.of(0, 1), 3, -5, answer.best());
        assertPlanned(List.of(1, 0), 3, 5, answer.alternatives().get(0));
    }

    @Test
    void case6StopsAtATravelLimit() {
        AxisSpec stopped = withStops(RACK, null, 200 * MM);
        Answer.Nearest answer = nearest(plan(stopped, 200 * MM + 10 * UM, 10 * UM - 1));
        assertPlanned(List.of(75, -3, 5), 91, -10 * UM, answer.below().orElseThrow());
        assertTrue(answer.above().isEmpty());
        assertEquals(Reason.BEYOND_TRAVEL, answer.reason());
    }

    @Test
    void case7HasTheStudiedReach() {
        Map<Long, Integer> ways = new HashMap<>();
        int settings = 0;
        StageSpec lower = RACK.stages().get(1);
        StageSpec upper = RACK.stages().get(2);
        for (int r = 0; r < 1000; r++) {
            for (int a = lower.rows().indices().first(); a <= lower.rows().indices().last(); a++) {
                for (int c = upper.rows().indices().first(); c <= upper.rows().indices().last(); c++) {
                    if (Math.abs(a * lower.pitch() + c * upper.pitch()) <= 15 * MM) {
                        ways.merge(RACK.position(Setting.of(r, a, c)), 1, Integer::sum);
                        settings++;
                    }
                }
            }
        }
        assertEquals(115_000, settings);
        assertEquals(106_090, ways.size());
        assertEquals(2, ways.values().stream().mapToInt(n -> n).max().orElseThrow());
        Planner planner = Planner.of(RACK);
        List<Long> reachable = Plans.positions(planner, -1000 * MM, 10_000 * MM);
        assertEquals(ways.keySet().stream().sorted().toList(), reachable);
        assertEquals(-15 * MM, reachable.get(0));
        assertEquals(2552 * MM + 460 * UM, reachable.get(reachable.size() - 1));
    }
}
