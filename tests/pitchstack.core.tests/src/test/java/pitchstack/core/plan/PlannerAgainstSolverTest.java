// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pitchstack.core.Stacks.MM;
import static pitchstack.core.Stacks.UM;
import static pitchstack.core.Stacks.axis;
import static pitchstack.core.Stacks.mark;
import static pitchstack.core.Stacks.row;
import static pitchstack.core.Stacks.stage;
import static pitchstack.core.Stacks.withLimits;
import static pitchstack.core.Stacks.withStops;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.RowSpec;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.ShiftLimit;
import pitchstack.core.stack.Source;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.Wear;
import pitchstack.core.stack.WornRange;
import pitchstack.core.units.RotaryScale;

/** Stacks larger than brute force would like, answered by a general-purpose solver as well. */
final class PlannerAgainstSolverTest {
    private static final long SEED = 7_741;
    /** Both kinds of answer must come up this often in a test, or its agreement would say little. */
    private static final int OFTEN = 10;

    private int reached;
    private int nearest;

    /** The rack of the planning study, every length a whole multiple of 10 µm. */
    @Test
    void agreesOnTheStudiedRack() {
        EffortCost fine = new EffortCost(2, 1);
        AxisSpec rack = withLimits(axis(stage("rack", 254 * MM / 100, 0, 999, new EffortCost(4, 1)),
                stage("lower fine", 5 * MM, -10, 9, fine), stage("upper fine", 49 * MM / 10, -9, 10, fine)),
                new ShiftLimit(1, 2, 15 * MM));
        Random random = new Random(SEED);
        for (int i = 0; i < 60; i++) {
            long unit = 10 * UM;
            AxisSpec axis = i % 3 == 0 ? withStops(rack, null, 10 * unit * random.nextInt(25_000)) : rack;
            PlanRequest request = new PlanRequest(unit * (random.nextInt(257_000) - 1600), unit * random.nextInt(3),
                    Setting.of(random.nextInt(1000), random.nextInt(20) - 10, random.nextInt(20) - 9),
                    WornPolicy.AVOID, 0);
            compare(axis, request, unit, "studied rack, case " + i);
        }
    }

    @Test
    void agreesOnLinearStacks() {
        for (int i = 0; i < 250; i++) {
            Random random = new Random(SEED + i);
            List<StageSpec> stages = new ArrayList<>();
            int count = 2 + random.nextInt(3);
            while (stages.size() < count) {
                stages.add(marked(random, 1 + random.nextInt(120)));
            }
            AxisSpec axis = axis(stages.toArray(StageSpec[]::new));
            if (random.nextInt(3) == 0) {
                axis = withLimits(axis, new ShiftLimit(0, random.nextInt(count), random.nextInt(400)));
            }
            if (random.nextInt(4) == 0) {
                axis = withStops(axis, -(long) random.nextInt(300), (long) random.nextInt(900));
            }
            PlanRequest request = request(random, axis, random.nextInt(1600) - 600, random.nextInt(4));
            compare(axis, request, 1, "linear seed " + (SEED + i));
        }
    }

    @Test
    void agreesOnRotaryStacks() {
        for (int i = 0; i < 100; i++) {
            Random random = new Random(SEED + i);
            AxisSpec axis = axis(new RotaryScale(RotaryScale.ARC_SECONDS), marked(random, 3600),
                    marked(random, 3660), marked(random, 1_296_000 / (20 + random.nextInt(100))));
            long target = (long) random.nextInt(1_296_000) - random.nextInt(2) * 1_296_000;
            compare(axis, request(random, axis, target, random.nextInt(700)), 1, "rotary seed " + (SEED + i));
        }
    }

    private static PlanRequest request(Random random, AxisSpec axis, long target, long tolerance) {
        int[] from = axis.stages().stream().mapToInt(s -> s.rows().indices().first() + random.nextInt(20)).toArray();
        return new PlanRequest(target, tolerance, Setting.of(from), WornPolicy.values()[random.nextInt(3)], 0);
    }

    /** Up to 40 indices; some base teeth are marked, never so that no clean index is left. */
    private static StageSpec marked(Random random, long pitch) {
        RowSpec base = row(20 + random.nextInt(16));
        RowPair rows = new RowPair(base, row(3 + random.nextInt(5)), random.nextInt(20), 2 + random.nextInt(2));
        if (random.nextBoolean()) {
            int first = random.nextInt(base.teeth());
            WornRange mark = mark(first, first + random.nextInt(3), random.nextBoolean() ? Wear.WORN : Wear.BARRED);
            rows = new RowPair(row(base.teeth(), mark), rows.rider(), rows.start(), rows.minimumEngaged());
        }
        return new StageSpec("s", Source.PRINTED, pitch, pitch, rows,
                new EffortCost(random.nextInt(6), random.nextInt(4)));
    }

    @AfterEach
    void metBothKindsOfAnswer() {
        assertTrue(reached >= OFTEN && nearest >= OFTEN, reached + " reached and " + nearest + " not");
    }

    private void compare(AxisSpec axis, PlanRequest request, long unit, String what) {
        Answer expected = SolverOracle.plan(axis, request, unit);
        Answer answer = Planner.of(axis).plan(request);
        String whole = what + "\n" + axis + "\n" + request;
        if (expected instanceof Answer.Nearest wanted) {
            Answer.Nearest found = assertInstanceOf(Answer.Nearest.class, answer, whole);
            assertEquals(wanted.below(), found.below(), whole);
            assertEquals(wanted.above(), found.above(), whole);
            nearest++;
        } else {
            assertEquals(expected, answer, whole);
            reached++;
        }
    }
}
