// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import pitchstack.core.stack.AxisSpec;

final class PlannerAgainstBruteForceTest {
    private static final long FIXED_SEED = 20_011;
    private static final int FIXED_STACKS = 100_000;
    private static final int FRESH_STACKS = 20_000;

    @Test
    void agreesOnStacksFromAFixedSeed() {
        // One stack has nothing to do with another, so all processors can work on them.
        List<Answer> answers = LongStream.range(FIXED_SEED, FIXED_SEED + FIXED_STACKS).parallel()
                .mapToObj(PlannerAgainstBruteForceTest::compare).toList();
        Map<Reason, Long> reasons = answers.stream().filter(Answer.Nearest.class::isInstance)
                .map(Answer.Nearest.class::cast).collect(Collectors.groupingBy(Answer.Nearest::reason, Collectors.counting()));
        long reached = FIXED_STACKS - reasons.values().stream().mapToLong(Long::longValue).sum();
        // Every kind of answer must have been put to the test often, or the agreement would say little.
        assertTrue(reached > FIXED_STACKS / 10, "reached only " + reached + " times");
        for (Reason reason : Reason.values()) {
            assertTrue(reasons.getOrDefault(reason, 0L) > FIXED_STACKS / 50, () -> "reasons met: " + reasons);
        }
    }

    @Test
    void agreesOnStacksFromAFreshSeed() {
        long seed = System.nanoTime();
        LongStream.range(seed, seed + FRESH_STACKS).parallel().forEach(PlannerAgainstBruteForceTest::compare);
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
