// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import pitchstack.core.Stacks;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.Setting;

class TableQueryTest {
    private static final long FIXED_SEED = 70_001;
    private static final int STACKS = 20_000;
    private static final int TARGETS = 4;

    @Test
    void answersEveryTargetAsThePlannerDoesOnStacksFromAFixedSeed() {
        int reached = 0;
        for (int i = 0; i < STACKS; i++) {
            reached += compare(FIXED_SEED + i);
        }
        assertTrue(reached > STACKS * TARGETS / 10, "reached only " + reached + " times");
    }

    @Test
    void answersEveryTargetAsThePlannerDoesOnStacksFromAFreshSeed() {
        long seed = System.nanoTime();
        for (int i = 0; i < STACKS / 4; i++) {
            compare(seed + i);
        }
    }

    private static int compare(long seed) {
        RandomStacks stacks = new RandomStacks(seed);
        AxisSpec axis = stacks.measuredAxis();
        PlanRequest start = stacks.request(axis);
        // The planner is itself compared with brute force, by a search that shares no loop with the table's.
        Planner planner = Planner.of(axis, stacks.mostEntries(), stacks.leastGain());
        TableQuery table = planner.table(start.from(), start.last(), start.worn());
        int reached = 0;
        for (int i = 0; i < TARGETS; i++) {
            PlanRequest near = stacks.request(axis);
            PlanRequest request = new PlanRequest(near.target(), near.tolerance(), start.from(), start.last(),
                    start.worn(), 0);
            String what = "seed " + seed + "\n" + axis + "\n" + request;
            Answer answer = planner.plan(request);
            Optional<PlannedSetting> best = answer instanceof Answer.Reached r ? Optional.of(r.best()) : Optional.empty();
            Optional<TableEntry> entry = table.find(near.target(), near.tolerance());
            assertEquals(best.map(p -> new TableEntry(p.setting(), p.position(), p.error(), p.effortMs())), entry, what);
            assertEquals(best.map(PlannedSetting::effortMs).orElse(-1L),
                    table.effortMs(near.target(), near.tolerance()).orElse(-1), what);
            assertEquals(answer, table.answer(near.target(), near.tolerance()), what);
            reached += best.isPresent() ? 1 : 0;
        }
        return reached;
    }

    @Test
    void refusesAStartOfAnotherNumberOfStages() {
        Planner planner = Planner.of(Stacks.axis(Stacks.stage("rack", 1000, 0, 9)));
        assertThrows(IllegalArgumentException.class,
                () -> planner.table(Setting.of(0, 0), Directions.unknown(2), WornPolicy.AVOID));
        assertThrows(IllegalArgumentException.class,
                () -> planner.table(Setting.of(0), Directions.unknown(2), WornPolicy.AVOID));
    }

    @Test
    void refusesANegativeTolerance() {
        TableQuery table = Planner.of(Stacks.axis(Stacks.stage("rack", 1000, 0, 9))).table(Setting.of(0),
                Directions.unknown(1), WornPolicy.AVOID);
        assertThrows(IllegalArgumentException.class, () -> table.find(0, -1));
        assertThrows(IllegalArgumentException.class, () -> table.effortMs(0, -1));
    }
}
