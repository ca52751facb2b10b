// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;
import pitchstack.core.plan.SequenceAnswer.Planned;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.ToothSpan;
import pitchstack.core.stack.Wear;
import pitchstack.core.stack.WornRange;

/** How plans of lists must change with the axis. Stacks and lists follow from a seed. */
class ListRelationsProperties {
    private static final int TRIES = 400;
    private static final long FAR = 1L << 50;

    private static Planned plan(AxisSpec axis, SequenceRequest request) {
        return (Planned) Sequences.plan(Planner.of(axis), request, Progress.NONE);
    }

    private static SequenceRequest list(RandomStacks stacks, AxisSpec axis, boolean free) {
        SequenceRequest request = stacks.list(axis, free ? StopOrder.FREE : StopOrder.GIVEN);
        Assume.that(request.stops().stream().allMatch(s -> -FAR < s.target() && s.target() < FAR
                && s.tolerance() < FAR));
        return request;
    }

    @Property(tries = TRIES, shrinking = ShrinkingMode.OFF)
    void scalingEveryLengthKeepsSettingsAndEffort(@ForAll long seed, @ForAll boolean free,
            @ForAll @IntRange(min = 2, max = 50) int factor) {
        RandomStacks stacks = new RandomStacks(seed);
        AxisSpec axis = stacks.measuredAxis();
        Assume.that(axis.scale().turn() == 0);
        SequenceRequest request = list(stacks, axis, free);
        List<Stop> scaled = request.stops().stream()
                .map(s -> new Stop(s.name(), s.target() * factor, s.tolerance() * factor)).toList();
        Planned one = plan(axis, request);
        Planned other = plan(Twins.scaled(axis, factor), new SequenceRequest(scaled, request.from(), request.last(),
                request.worn(), request.order(), request.memoryBytes()));
        assertEquals(one.effortMs(), other.effortMs());
        assertEquals(one.legs().stream().map(leg -> leg.move().map(PlannedSetting::setting)).toList(),
                other.legs().stream().map(leg -> leg.move().map(PlannedSetting::setting)).toList());
    }

    /** By stops left out, then by stops on worn teeth where these are to be avoided, then by effort. */
    @Property(tries = TRIES, shrinking = ShrinkingMode.OFF)
    void markingTeethNeverHelpsAList(@ForAll long seed, @ForAll boolean free, @ForAll boolean base,
            @ForAll boolean barred, @ForAll @IntRange(min = 0, max = 7) int first) {
        RandomStacks stacks = new RandomStacks(seed);
        AxisSpec axis = stacks.measuredAxis();
        SequenceRequest request = list(stacks, axis, free);
        int stage = new Random(seed).nextInt(axis.stages().size());
        WornRange mark = new WornRange(new ToothSpan(first, first + 1), barred ? Wear.BARRED : Wear.WORN);
        Planned before = plan(axis, request);
        Planned after = plan(Twins.marked(axis, stage, base, mark), request);
        long wornBefore = worn(before, request);
        long wornAfter = worn(after, request);
        assertTrue(before.leftOut() < after.leftOut() || before.leftOut() == after.leftOut()
                && (wornBefore < wornAfter || wornBefore == wornAfter && before.effortMs() <= after.effortMs()),
                () -> before + " after " + after);
    }

    private static long worn(Planned plan, SequenceRequest request) {
        return request.worn() != WornPolicy.AVOID ? 0 : plan.legs().stream().flatMap(leg -> leg.move().stream())
                .filter(move -> !move.wornStages().isEmpty()).count();
    }
}
