// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;
import pitchstack.core.plan.SequenceAnswer.Planned;
import pitchstack.core.stack.AxisSpec;

/** How plans of lists must change with the list. Stacks and lists follow from a seed. */
class SequenceProperties {
    private static final int TRIES = 400;
    private static final long FAR = 1L << 60;

    /** Stops left out, stops on worn teeth where these are to be avoided, effort. */
    private record Total(int leftOut, long worn, long effort) {
        static Total of(Planned plan, SequenceRequest request) {
            long worn = request.worn() != WornPolicy.AVOID ? 0 : plan.legs().stream().flatMap(leg -> leg.move().stream())
                    .filter(move -> !move.wornStages().isEmpty()).count();
            return new Total(plan.leftOut(), worn, plan.effortMs());
        }

        boolean isNoWorseThan(Total o) {
            return leftOut != o.leftOut ? leftOut < o.leftOut : worn != o.worn ? worn < o.worn : effort <= o.effort;
        }
    }

    @Property(tries = TRIES, shrinking = ShrinkingMode.OFF)
    void lookingAheadNeverCostsMoreAndNeitherDoesAFreeOrder(@ForAll long seed) {
        RandomStacks stacks = new RandomStacks(seed);
        AxisSpec axis = stacks.measuredAxis();
        SequenceRequest request = list(stacks, axis);
        Total oneByOne = total(axis, request.in(StopOrder.ONE_BY_ONE));
        Total given = total(axis, request.in(StopOrder.GIVEN));
        assertTrue(given.isNoWorseThan(oneByOne), given + " after " + oneByOne);
        Total free = total(axis, request.in(StopOrder.FREE));
        assertTrue(free.isNoWorseThan(given), free + " after " + given);
    }

    @Property(tries = TRIES, shrinking = ShrinkingMode.OFF)
    void aFreeOrderDoesNotDependOnTheGivenOne(@ForAll long seed) {
        RandomStacks stacks = new RandomStacks(seed);
        AxisSpec axis = stacks.measuredAxis();
        SequenceRequest request = list(stacks, axis);
        List<Stop> shuffled = new ArrayList<>(request.stops());
        Collections.shuffle(shuffled, new Random(seed));
        assertEquals(total(axis, request.in(StopOrder.FREE)),
                total(axis, with(request, shuffled).in(StopOrder.FREE)));
    }

    @Property(tries = TRIES, shrinking = ShrinkingMode.OFF)
    void reversingTheAxisKeepsTheEffort(@ForAll long seed, @ForAll boolean free) {
        RandomStacks stacks = new RandomStacks(seed);
        AxisSpec axis = stacks.measuredAxis();
        SequenceRequest request = list(stacks, axis).in(free ? StopOrder.FREE : StopOrder.GIVEN);
        assertEquals(total(axis, request), total(Twins.mirrored(axis), Twins.mirrored(request)));
    }

    @Property(tries = TRIES, shrinking = ShrinkingMode.OFF)
    void largerTolerancesNeverCostMore(@ForAll long seed, @ForAll boolean free,
            @ForAll @IntRange(min = 0, max = 300) int more) {
        RandomStacks stacks = new RandomStacks(seed);
        AxisSpec axis = stacks.measuredAxis();
        SequenceRequest request = list(stacks, axis).in(free ? StopOrder.FREE : StopOrder.GIVEN);
        long wider = more * axis.stages().get(0).pitch() / 100;
        SequenceRequest loose = with(request, request.stops().stream()
                .map(stop -> new Stop(stop.name(), stop.target(), stop.tolerance() + wider)).toList());
        Total one = total(axis, loose);
        Total other = total(axis, request);
        assertTrue(one.isNoWorseThan(other), one + " after " + other);
    }

    @Property(tries = TRIES, shrinking = ShrinkingMode.OFF)
    void shiftingDatumAndStopsTogetherKeepsTheSettings(@ForAll long seed, @ForAll @IntRange(min = -99, max = 99) int by) {
        RandomStacks stacks = new RandomStacks(seed);
        AxisSpec axis = stacks.measuredAxis();
        SequenceRequest request = list(stacks, axis).in(StopOrder.GIVEN);
        long shift = by * axis.stages().get(0).pitch() / 3;
        List<Stop> stops = request.stops().stream()
                .map(stop -> new Stop(stop.name(), stop.target() + shift, stop.tolerance())).toList();
        assertEquals(settings(plan(axis, request)), settings(plan(Twins.shifted(axis, shift), with(request, stops))));
    }

    private static List<Object> settings(Planned plan) {
        return plan.legs().stream().map(leg -> (Object) leg.move().map(PlannedSetting::setting)).toList();
    }

    private static Total total(AxisSpec axis, SequenceRequest request) {
        return Total.of(plan(axis, request), request);
    }

    private static Planned plan(AxisSpec axis, SequenceRequest request) {
        return (Planned) Sequences.plan(Planner.of(axis), request, Progress.NONE);
    }

    private static SequenceRequest with(SequenceRequest r, List<Stop> stops) {
        return new SequenceRequest(stops, r.from(), r.last(), r.worn(), r.order(), r.memoryBytes());
    }

    private static SequenceRequest list(RandomStacks stacks, AxisSpec axis) {
        SequenceRequest request = stacks.list(axis, StopOrder.GIVEN);
        Assume.that(request.stops().stream().allMatch(s -> -FAR < s.target() && s.target() < FAR
                && s.tolerance() < FAR));
        return request;
    }
}
