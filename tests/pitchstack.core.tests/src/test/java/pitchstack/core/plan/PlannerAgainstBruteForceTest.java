// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import pitchstack.core.stack.AxisSpec;

final class PlannerAgainstBruteForceTest {
    private static final long FIXED_SEED = 20_011;
    private static final int FIXED_STACKS = 100_000;
    private static final int FRESH_STACKS = 20_000;

    @Test
    void agreesOnStacksFromAFixedSeed() {
        Map<Reason, Integer> reasons = new EnumMap<>(Reason.class);
        int reached = 0;
        for (int i = 0; i < FIXED_STACKS; i++) {
            Answer answer = compare(FIXED_SEED + i);
            if (answer instanceof Answer.Nearest nearest) {
                reasons.merge(nearest.reason(), 1, Integer::sum);
            } else {
                reached++;
            }
        }
        // Every kind of answer must have been put to the test often, or the agreement would say little.
        assertTrue(reached > FIXED_STACKS / 10, "reached only " + reached + " times");
        for (Reason reason : Reason.values()) {
            assertTrue(reasons.getOrDefault(reason, 0) > FIXED_STACKS / 50, () -> "reasons met: " + reasons);
        }
    }

    @Test
    void agreesOnStacksFromAFreshSeed() {
        long seed = System.nanoTime();
        for (int i = 0; i < FRESH_STACKS; i++) {
            compare(seed + i);
        }
    }

    private static Answer compare(long seed) {
        RandomStacks stacks = new RandomStacks(seed);
        AxisSpec axis = stacks.measuredAxis();
        Planner planner = Planner.of(axis, stacks.mostEntries(), stacks.leastGain());
        BruteForce force = new BruteForce(axis);
        Answer answer = null;
        for (int i = 0; i < 2; i++) {
            PlanRequest request = stacks.request(axis);
            answer = planner.plan(request);
            assertEquals(force.plan(request), answer, () -> "seed " + seed + "\n" + axis + "\n" + request);
        }
        return answer;
    }
}
