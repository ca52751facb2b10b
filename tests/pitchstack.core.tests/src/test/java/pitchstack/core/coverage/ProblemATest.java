// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import pitchstack.core.plan.Progress;
import pitchstack.core.stack.ToothSpan;
import pitchstack.core.stack.Wear;
import pitchstack.core.stack.WornRange;

/** Problem A, whose exact reach has been listed by brute force apart from this program. */
final class ProblemATest {
    private static final long MICROMETRE = 1_000_000_000L;
    private final Reach reach = Reach.of(KnownStacks.problemA(), Progress.NONE).get();

    @Test
    void has106090PositionsFromMinus15To2552Point46ReachedInAtMostTwoWays() {
        List<Stretch> stretches = reach.coverage(0, Progress.NONE).get().stretches();
        List<Stretch> reached = stretches.stream().filter(s -> s.reached() == Reached.CLEAN).toList();
        assertEquals(106_090, reached.size());
        assertEquals(KnownStacks.mm("-15"), stretches.get(0).low());
        assertEquals(KnownStacks.mm("2552.46"), stretches.get(stretches.size() - 1).high());
        long settings = 0;
        for (Stretch position : reached) {
            Ways ways = reach.ways(position.low(), 0);
            assertEquals(1, position.size());
            assertTrue(ways.clean() == 1 || ways.clean() == 2, () -> ways + " at " + position);
            settings += ways.clean();
        }
        assertEquals(115_000, settings);
        assertEquals(new Ways(115_000, 0), reach.ways(0, Long.MAX_VALUE));
    }

    @Test
    void reachesAPositionAtTheEdgeOfTheToleranceAndNotOneCountBeyond() {
        // 100 mm is reached exactly; the next position above 100.010 mm is 100.020 mm.
        long target = KnownStacks.mm("100.010");
        assertEquals(Reached.CLEAN, reach.coverage(10 * MICROMETRE, Progress.NONE).get().at(target));
        assertEquals(Reached.NOT, reach.coverage(10 * MICROMETRE - 1, Progress.NONE).get().at(target));
    }

    /** Worn rack teeth 100 to 102 under a rider of 20 teeth mark the indices 81 to 102, and no others. */
    @Test
    void losesAWornStretchOfTheRackToEveryIndexWhoseRiderMeetsIt() {
        WearMark mark = new WearMark(0, WearMark.Row.BASE, new WornRange(new ToothSpan(100, 102), Wear.BARRED));
        Reach barred = Reach.of(mark.on(KnownStacks.problemA()), Progress.NONE).get();
        assertEquals(new Ways((1000 - 22) * 115L, 0), barred.ways(0, Long.MAX_VALUE));
        Coverage after = barred.coverage(0, Progress.NONE).get();
        CoverageChange change = CoverageChange.between(reach.coverage(0, Progress.NONE).get(), after);
        assertEquals(change.changed(), change.lost());
        // From the highest offset on index 80 to the lowest on index 103 nothing is left: ±15 mm about 2.54 mm each.
        Stretch gap = after.summary().largestGap().orElseThrow();
        assertEquals(80 * KnownStacks.mm("2.54") + KnownStacks.mm("15") + 1, gap.low());
        assertEquals(103 * KnownStacks.mm("2.54") - KnownStacks.mm("15") - 1, gap.high());
    }
}
