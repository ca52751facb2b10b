// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pitchstack.core.Stacks.MM;
import static pitchstack.core.Stacks.axis;
import static pitchstack.core.Stacks.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pitchstack.core.plan.SequenceAnswer.Cancelled;
import pitchstack.core.plan.SequenceAnswer.Planned;
import pitchstack.core.plan.SequenceAnswer.Refused;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.Setting;

/** Lists on a rack of 5 mm and a fine stage of 4.9 mm; a release costs 4 s and 2 s, a tooth 1 s. */
class SequencesTest {
    private static final AxisSpec PAIR = axis(stage("rack", 5 * MM, 0, 199, new EffortCost(4000, 1000)),
            stage("fine", 49 * MM / 10, -20, 20, new EffortCost(2000, 1000)));
    private static final Planner PLANNER = Planner.of(PAIR);
    private static final Setting HOME = Setting.zero(2);

    @Test
    void looksAheadInAGivenOrder() {
        // 4.95 mm ± 0.05 mm is the rack's first tooth, 5 s, or the fine stage's, 3 s. Then 9.9 mm ± 0.05 mm:
        // from the rack's the fine stage's first (9.9), 3 s; from the fine stage's the rack's first, 5 s, or (0, 2), 3 s.
        List<Stop> stops = List.of(stop(4.95, 0.05), stop(10, 0), stop(5, 0));
        Planned plan = planned(request(stops, StopOrder.GIVEN));
        // One by one: fine 1 (3 s); to (2, 0): 6 + 3 = 9 s; to (1, 0): 5 s; 17 s. Ahead: rack 1, 2, 1: 5 + 5 + 5 s.
        assertEquals(17_000, plan.oneByOne().orElseThrow().effortMs());
        assertEquals(15_000, plan.effortMs());
        assertEquals(2_000, plan.savedMs().orElseThrow());
        assertEquals(List.of(Setting.of(1, 0), Setting.of(2, 0), Setting.of(1, 0)), settings(plan));
        assertTrue(plan.isLeast());
    }

    @Test
    void visitsInTheCheapestOrderWhereThatIsFree() {
        // Along the rack, 1 s a tooth and 4 s a move: 10, 20, 30 mm in order are 2 teeth each.
        Planned plan = planned(request(List.of(stop(30, 0), stop(10, 0), stop(20, 0)), StopOrder.FREE));
        assertEquals(List.of(1, 2, 0), plan.legs().stream().map(Leg::stop).toList());
        assertEquals(3 * (4000 + 2 * 1000), plan.effortMs());
        // In the given order: 6, 4 and 2 teeth.
        assertEquals(3 * 4000 + 12 * 1000, plan.oneByOne().orElseThrow().effortMs());
    }

    @Test
    void leavesOutAStopThatCannotBeReachedAndSaysWhy() {
        Planned plan = planned(request(List.of(stop(10, 0), stop(2000, 0), stop(15, 0)), StopOrder.GIVEN));
        assertEquals(List.of(true, false, true), plan.legs().stream().map(leg -> leg.move().isPresent()).toList());
        Answer.Nearest nearest = plan.legs().get(1).nearest().orElseThrow();
        assertEquals(Reason.BEYOND_TRAVEL, nearest.reason());
        // 199 · 5 + 20 · 4.9 = 1093 mm.
        assertEquals(1093 * MM, nearest.below().orElseThrow().position());
        assertEquals(1, plan.leftOut());
        // From 10 mm, where the stages then stand: 197 teeth and 20 teeth.
        assertEquals(4000 + 197_000 + 2000 + 20_000, nearest.below().orElseThrow().effortMs());
    }

    @Test
    void plansAnEmptyListAsNothing() {
        for (StopOrder order : StopOrder.values()) {
            Planned plan = planned(request(List.of(), order));
            assertEquals(List.of(), plan.legs());
            assertEquals(0, plan.effortMs());
        }
    }

    @Test
    void keepsTheOrderOfALongListWithinItsBound() {
        List<Stop> stops = cuts(60);
        Planned given = planned(request(stops, StopOrder.GIVEN));
        Planned free = planned(request(stops, StopOrder.FREE));
        assertEquals(60, free.legs().stream().map(Leg::stop).distinct().count());
        assertTrue(free.effortMs() <= given.effortMs() && given.effortMs() <= given.oneByOne().orElseThrow().effortMs());
        assertTrue(free.leastMs().orElseThrow() <= free.effortMs());
        // No plan can do with fewer releases than one a stop: a bound of our own, far below.
        assertTrue(free.leastMs().orElseThrow() >= 60 * 2000L);
    }

    @ParameterizedTest
    @EnumSource
    void endsWhenItIsCancelledWhereverItIs(StopOrder order) {
        SequenceRequest request = request(cuts(order == StopOrder.FREE ? 9 : 30), order);
        int asked = 0;
        for (int patience = 0; ; patience = patience * 2 + 1) {
            Impatient progress = new Impatient(patience);
            SequenceAnswer answer = Sequences.plan(PLANNER, request, progress);
            assertTrue(progress.sound, "progress went beyond its end");
            if (answer instanceof Planned) {
                break;
            }
            assertInstanceOf(Cancelled.class, answer);
            asked++;
        }
        assertTrue(asked > 3, "asked only " + asked + " times whether to go on");
    }

    @Test
    void refusesWhatWouldTakeTooMuchMemoryWithTheWayOut() {
        List<Stop> stops = List.of(stop(100, 0), new Stop("any", 500 * MM, 400 * MM));
        SequenceRequest small = new SequenceRequest(stops, HOME, Directions.unknown(2), WornPolicy.AVOID, StopOrder.GIVEN,
                100_000);
        String settings = assertInstanceOf(Refused.class, Sequences.plan(PLANNER, small, Progress.NONE)).sentence();
        assertTrue(settings.startsWith("“any” with its tolerance of 400.000 mm can be set in more than "), settings);
        assertTrue(settings.endsWith(" ways, too many to compare in 100000 bytes of memory; give it a smaller tolerance, "
                + "allow more memory, or plan the stops one by one."), settings);
        List<Stop> many = new ArrayList<>();
        for (int i = 0; i < 400; i++) {
            many.add(stop(5 * (i % 199), 0));
        }
        SequenceRequest long4 = new SequenceRequest(many, HOME, Directions.unknown(2), WornPolicy.AVOID, StopOrder.FREE,
                4L << 20);
        String order = assertInstanceOf(Refused.class, Sequences.plan(PLANNER, long4, Progress.NONE)).sentence();
        assertEquals("To look for the best order of 400 stops takes more than 4 MB of memory; keep their given order, "
                + "split the list, allow more memory, or plan the stops one by one.", order);
        assertInstanceOf(Planned.class, Sequences.plan(PLANNER, long4.in(StopOrder.ONE_BY_ONE), Progress.NONE));
    }

    @Test
    void refusesEffortsTooLargeToAddUp() {
        AxisSpec dear = axis(stage("rack", 5 * MM, 0, 9, new EffortCost(0, 1L << 28)));
        SequenceRequest request = new SequenceRequest(List.of(stop(5, 0), stop(10, 0)), Setting.zero(1), WornPolicy.AVOID,
                StopOrder.GIVEN);
        assertInstanceOf(Planned.class, Sequences.plan(Planner.of(dear), request, Progress.NONE));
        AxisSpec dearer = axis(stage("rack", 5 * MM, 0, 9, new EffortCost(0, Long.MAX_VALUE / ((1L << 32) + 2))));
        String sentence = assertInstanceOf(Refused.class, Sequences.plan(Planner.of(dearer), request, Progress.NONE)).sentence();
        assertTrue(sentence.contains("too large to be added up exactly"), sentence);
    }

    /** Loses patience after so many questions. */
    private static final class Impatient implements Progress {
        private int patience;
        private boolean sound = true;

        Impatient(int patience) {
            this.patience = patience;
        }

        @Override
        public boolean isCancelled() {
            return patience-- <= 0;
        }

        @Override
        public void done(long part, long of) {
            sound &= 0 <= part && part <= of;
        }
    }

    private static List<Stop> cuts(int count) {
        Random random = new Random(count);
        List<Stop> stops = new ArrayList<>();
        while (stops.size() < count) {
            stops.add(stop(20 + random.nextInt(9000) / 10.0, 0.1));
        }
        return stops;
    }

    private static Stop stop(double targetMm, double toleranceMm) {
        return new Stop("", Math.round(targetMm * 1000) * (MM / 1000), Math.round(toleranceMm * 1000) * (MM / 1000));
    }

    private static SequenceRequest request(List<Stop> stops, StopOrder order) {
        return new SequenceRequest(stops, HOME, WornPolicy.AVOID, order);
    }

    private static Planned planned(SequenceRequest request) {
        return assertInstanceOf(Planned.class, Sequences.plan(PLANNER, request, Progress.NONE));
    }

    private static List<Setting> settings(Planned plan) {
        return plan.legs().stream().map(leg -> leg.move().orElseThrow().setting()).toList();
    }
}
