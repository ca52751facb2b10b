// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pitchstack.core.plan.SequenceAnswer.Planned;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.Setting;

final class SequencesAgainstBruteForceTest {
    private static final long FIXED_SEED = 40_031;
    private static final int LISTS = 4_000;
    private static final double MOST_PLANS = 3_000;

    @ParameterizedTest
    @EnumSource(names = {"GIVEN", "FREE"})
    void findsTheBestPlanOfListsFromAFixedSeed(StopOrder order) {
        int saved = 0;
        int leftOut = 0;
        int compared = 0;
        for (int i = 0; i < LISTS; i++) {
            Optional<Planned> plan = compare(FIXED_SEED + i, order);
            compared += plan.isPresent() ? 1 : 0;
            saved += plan.isPresent() && plan.get().savedMs().orElse(0) > 0 ? 1 : 0;
            leftOut += plan.isPresent() && plan.get().legs().stream()
                    .anyMatch(leg -> leg.move().isEmpty() && leg.nearest().isEmpty()) ? 1 : 0;
        }
        // Agreement would say little if most lists were too large to compare, or planned just as well one by one.
        assertTrue(compared > LISTS / 2, "compared " + compared);
        assertTrue(saved > LISTS / 40, "saved in " + saved);
        // In a free order a stop that can be reached from the end is not left out.
        assertTrue(leftOut > 0 || order == StopOrder.FREE, "no stop was ever left out for another");
    }

    @ParameterizedTest
    @EnumSource(names = {"GIVEN", "FREE"})
    void findsTheBestPlanOfListsFromAFreshSeed(StopOrder order) {
        long seed = System.nanoTime();
        for (int i = 0; i < LISTS / 4; i++) {
            compare(seed + i, order);
        }
    }

    @Test
    void boundsTheBestOrderOnBothSidesWhereItIsNotSearchedExactly() {
        long seed = System.nanoTime();
        int best = 0;
        int bounds = 0;
        int met = 0;
        for (int i = 0; i < LISTS / 4; i++) {
            RandomStacks stacks = new RandomStacks(seed + i);
            AxisSpec axis = stacks.measuredAxis();
            SequenceRequest request = stacks.list(axis, StopOrder.FREE);
            SequenceBruteForce force = new SequenceBruteForce(axis, request);
            if (force.size() <= MOST_PLANS) {
                String what = "seed " + (seed + i) + "\n" + axis + "\n" + request;
                Planned plan = (Planned) Sequences.plan(Planner.of(axis), request, Progress.NONE, 0);
                int more = force.total(plan.legs()).compareTo(force.best());
                assertTrue(more >= 0, what);
                best += more == 0 ? 1 : 0;
                bounds++;
                if (plan.leastMs().isPresent()) {
                    assertTrue(plan.leastMs().getAsLong() <= force.best().effort(), what);
                    met += plan.leastMs().getAsLong() == force.best().effort() ? 1 : 0;
                }
            }
        }
        assertTrue(best > bounds * 0.95, "only " + best + " of " + bounds + " short lists were planned best");
        assertTrue(met > bounds * 0.5, "the bound was met in only " + met + " of " + bounds);
    }

    private static Optional<Planned> compare(long seed, StopOrder order) {
        RandomStacks stacks = new RandomStacks(seed);
        AxisSpec axis = stacks.measuredAxis();
        SequenceRequest request = stacks.list(axis, order);
        SequenceBruteForce force = new SequenceBruteForce(axis, request);
        if (force.size() > MOST_PLANS) {
            return Optional.empty();
        }
        String what = "seed " + seed + "\n" + axis + "\n" + request;
        Planner planner = Planner.of(axis, stacks.mostEntries(), stacks.leastGain());
        Planned plan = assertInstanceOf(Planned.class, Sequences.plan(planner, request, Progress.NONE), what);
        assertEquals(force.best(), force.total(plan.legs()), what);
        assertEquals(force.best().effort(), plan.effortMs(), what);
        assertEquals(OptionalLong.of(plan.effortMs()), plan.leastMs(), what);
        assertEquals(oneByOne(planner, request), plan.oneByOne().orElseThrow().legs(), what);
        assertEveryStopIsThereOnce(plan, request, what);
        return Optional.of(plan);
    }

    private static void assertEveryStopIsThereOnce(Planned plan, SequenceRequest request, String what) {
        List<Integer> stops = plan.legs().stream().map(Leg::stop).toList();
        List<Integer> sorted = stops.stream().sorted().distinct().toList();
        assertEquals(request.stops().size(), sorted.size(), what);
        assertEquals(stops.size(), sorted.size(), what);
        assertTrue(request.order() == StopOrder.FREE || stops.equals(sorted), what);
    }

    @Test
    void plansOneByOneAndEachFromTheStartAsThePlannerPlansOneTarget() {
        long seed = System.nanoTime();
        for (int i = 0; i < LISTS / 4; i++) {
            RandomStacks stacks = new RandomStacks(seed + i);
            AxisSpec axis = stacks.measuredAxis();
            Planner planner = Planner.of(axis);
            SequenceRequest request = stacks.list(axis, StopOrder.ONE_BY_ONE);
            String what = "seed " + (seed + i) + "\n" + axis + "\n" + request;
            Planned chain = (Planned) Sequences.plan(planner, request, Progress.NONE);
            assertEquals(oneByOne(planner, request), chain.legs(), what);
            Planned table = (Planned) Sequences.plan(planner, request.in(StopOrder.EACH_FROM_START), Progress.NONE);
            for (int stop = 0; stop < request.stops().size(); stop++) {
                assertEquals(leg(planner, request, stop, request.from(), request.last()), table.legs().get(stop), what);
            }
        }
    }

    private static List<Leg> oneByOne(Planner planner, SequenceRequest request) {
        List<Leg> legs = new ArrayList<>();
        Setting from = request.from();
        Directions last = request.last();
        for (int stop = 0; stop < request.stops().size(); stop++) {
            Leg leg = leg(planner, request, stop, from, last);
            legs.add(leg);
            if (leg.move().isPresent()) {
                last = leg.move().get().directionsAfter(last);
                from = leg.move().get().setting();
            }
        }
        return legs;
    }

    private static Leg leg(Planner planner, SequenceRequest request, int stop, Setting from, Directions last) {
        Stop wanted = request.stops().get(stop);
        Answer answer = planner.plan(new PlanRequest(wanted.target(), wanted.tolerance(), from, last, request.worn(), 0));
        return answer instanceof Answer.Reached reached ? new Leg(stop, Optional.of(reached.best()), Optional.empty())
                : new Leg(stop, Optional.empty(), Optional.of((Answer.Nearest) answer));
    }
}
