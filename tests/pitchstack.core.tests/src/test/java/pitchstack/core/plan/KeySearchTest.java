// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import pitchstack.core.Stacks;
import pitchstack.core.stack.Approach;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.IndexErrors;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.ShiftLimit;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.Wear;

/** Racks under pairs with thousands of combinations: trying the cheapest first must find what reading the list finds. */
class KeySearchTest {
    private static final long FIXED_SEED = 90_001;
    private static final int STACKS = 60;
    private static final int REQUESTS = 40;
    private static final double NEVER = Double.POSITIVE_INFINITY;

    @Test
    void findsTheSameAsReadingTheListOnRacksFromAFixedSeed() {
        int reached = 0;
        for (int i = 0; i < STACKS; i++) {
            reached += compare(FIXED_SEED + i);
        }
        assertTrue(reached > STACKS * REQUESTS / 4, "reached only " + reached);
    }

    @Test
    void findsTheSameAsReadingTheListOnRacksFromAFreshSeed() {
        long seed = System.nanoTime();
        for (int i = 0; i < STACKS / 3; i++) {
            compare(seed + i);
        }
    }

    private static int compare(long seed) {
        Random random = new Random(seed);
        AxisSpec axis = axis(random);
        Planner byKey = Planner.of(axis, CombinationLister.MOST_ENTRIES, 0);
        Planner byList = Planner.of(axis, CombinationLister.MOST_ENTRIES, NEVER);
        RandomStacks stacks = new RandomStacks(seed);
        int reached = 0;
        for (int i = 0; i < REQUESTS; i++) {
            int[] from = axis.stages().stream().map(s -> s.rows().indices())
                    .mapToInt(r -> r.first() + random.nextInt(r.count())).toArray();
            long target = random.nextInt(4) == 0 ? axis.position(Setting.of(from)) + random.nextInt(5000) - 2500
                    : random.nextInt(70_000) - 5000;
            PlanRequest request = new PlanRequest(target, random.nextInt(3) * random.nextInt(60), Setting.of(from),
                    stacks.directions(from.length), WornPolicy.values()[random.nextInt(3)], 0);
            Answer answer = byKey.plan(request);
            assertEquals(byList.plan(request), answer, () -> "seed " + seed + "\n" + axis + "\n" + request);
            reached += answer instanceof Answer.Reached ? 1 : 0;
        }
        return reached;
    }

    /** Pitches of about a thousand counts, one count in a few hundred the difference of a pair. */
    private static AxisSpec axis(Random random) {
        List<StageSpec> stages = new ArrayList<>();
        List<ShiftLimit> limits = new ArrayList<>();
        stages.add(stage(random, 900 + random.nextInt(300), 0, 60));
        for (int pair = 2 + random.nextInt(2); pair > 0; pair--) {
            int pitch = 800 + random.nextInt(600);
            limits.add(new ShiftLimit(stages.size(), stages.size() + 1, pitch + random.nextInt(3 * pitch)));
            stages.add(stage(random, pitch, -4, 4));
            stages.add(stage(random, pitch - 1 - random.nextInt(90), -4, 4));
        }
        return new AxisSpec("axis", Stacks.LINEAR, stages, random.nextInt(100), OptionalLong.empty(), OptionalLong.empty(),
                limits, Approach.values()[random.nextInt(3)], 0, OptionalLong.empty());
    }

    private static StageSpec stage(Random random, int pitch, int first, int last) {
        EffortCost cost = new EffortCost(random.nextInt(5), random.nextInt(4), random.nextInt(3));
        StageSpec stage = Stacks.stage("s", pitch, first, last, cost);
        if (random.nextInt(3) == 0) {
            int mark = random.nextInt(last - first + 1);
            stage = stage.withRows(new RowPair(Stacks.row(last - first + 1, Stacks.mark(mark, mark + 1,
                    random.nextBoolean() ? Wear.WORN : Wear.BARRED)), Stacks.row(1), -first, 1));
        }
        TreeMap<Integer, Long> errors = new TreeMap<>();
        for (int n = first; n <= last && random.nextInt(20) > 0; n++) {
            errors.put(n, (long) random.nextInt(41) - 20);
        }
        return random.nextInt(3) == 0 ? stage.withErrors(IndexErrors.of(errors)) : stage;
    }
}
