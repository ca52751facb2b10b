// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.Random;
import org.junit.jupiter.api.Test;
import pitchstack.core.stack.Approach;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.RowSpec;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.ShiftLimit;
import pitchstack.core.stack.Source;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.ToothSpan;
import pitchstack.core.stack.Wear;
import pitchstack.core.stack.WornRange;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.LinearScale;

/** Pairs and triples of stages that may stand only a few teeth off each other, so that they must take turns. */
class TightLimitsTest {
    private static final int STACKS = 3_000;

    @Test
    void agreesWithTurnsTriedOneAfterAnother() {
        long fresh = System.nanoTime();
        int partway = 0;
        int noMove = 0;
        for (int i = 0; i < STACKS; i++) {
            long seed = i % 2 == 0 ? i : fresh + i;
            Random random = new Random(seed);
            AxisSpec axis = axis(random);
            PlanRequest request = request(random, axis);
            Answer answer = Planner.of(axis, 1 + random.nextInt(200), random.nextBoolean() ? 0 : KeySearch.LEAST_GAIN).plan(request);
            assertEquals(new BruteForce(axis).plan(request), answer, () -> "seed " + seed + "\n" + axis + "\n" + request);
            partway += answer instanceof Answer.Reached reached && reached.best().steps().stream()
                    .anyMatch(step -> step.kind() == Step.Kind.PARTWAY) ? 1 : 0;
            noMove += answer instanceof Answer.Nearest nearest && nearest.reason() == Reason.NO_MOVE ? 1 : 0;
        }
        assertTrue(partway > STACKS / 20, "stages took turns in only " + partway + " moves");
        assertTrue(noMove > STACKS / 100, "no move in only " + noMove);
    }

    private static AxisSpec axis(Random random) {
        List<StageSpec> stages = new ArrayList<>();
        int pitch = 8 + random.nextInt(20);
        int count = 2 + random.nextInt(2);
        while (stages.size() < count) {
            stages.add(stage(random, pitch - random.nextInt(3), count == 2 ? 20 : 8));
        }
        List<ShiftLimit> limits = new ArrayList<>(List.of(new ShiftLimit(0, count - 1, pitch * (1 + random.nextInt(3)) + 3)));
        if (random.nextBoolean()) {
            limits.add(new ShiftLimit(0, 1, pitch * (1 + random.nextInt(3))));
        }
        OptionalLong stop = random.nextInt(4) > 0 ? OptionalLong.empty() : OptionalLong.of(pitch * random.nextInt(3));
        return new AxisSpec("tight", new LinearScale(LengthUnit.MM), stages, 0, OptionalLong.empty(), stop, limits,
                Approach.values()[random.nextInt(3)], 0, OptionalLong.empty());
    }

    /** One rider tooth, so that the base teeth are the indices. */
    private static StageSpec stage(Random random, int pitch, int indices) {
        List<WornRange> marks = new ArrayList<>();
        while (random.nextInt(3) == 0) {
            int first = random.nextInt(indices);
            marks.add(new WornRange(new ToothSpan(first, first + random.nextInt(2)), Wear.BARRED));
        }
        RowPair rows = new RowPair(new RowSpec(indices, marks), new RowSpec(1, List.of()), indices / 2, 1);
        return new StageSpec("s", Source.PRINTED, pitch, pitch, rows,
                new EffortCost(random.nextInt(4), 1 + random.nextInt(2), random.nextInt(2)));
    }

    /** From somewhere within the limits to a position of the axis, or close by. */
    private static PlanRequest request(Random random, AxisSpec axis) {
        List<int[]> within = new BruteForce(axis).within(0, Long.MAX_VALUE, Wear.BARRED);
        int[] from = within.get(random.nextInt(within.size()));
        int[] to = within.get(random.nextInt(within.size()));
        return new PlanRequest(axis.position(Setting.of(to)) + random.nextInt(3) - 1, random.nextInt(2), Setting.of(from),
                new RandomStacks(random.nextLong()).directions(from.length), WornPolicy.ALLOW, random.nextInt(3));
    }
}
