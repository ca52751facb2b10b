// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.UnaryOperator;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;
import pitchstack.core.plan.Answer.Nearest;
import pitchstack.core.plan.Answer.Reached;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.ToothSpan;
import pitchstack.core.stack.Wear;
import pitchstack.core.stack.WornRange;

/** How answers must change with the question, whatever they are. Stacks and requests follow from a seed. */
class PlannerProperties {
    private static final int TRIES = 4_000;
    /** Farther targets are cut off at the end of what a long holds. */
    private static final long FAR = 1L << 60;

    /** What can be said of an answer without naming a side or an index: worn stages, effort and |error|. */
    private static List<Long> side(PlannedSetting planned) {
        return List.of((long) planned.wornStages().size(), planned.effortMs(), Math.abs(planned.error()),
                (long) planned.steps().size());
    }

    @Property(tries = TRIES, shrinking = ShrinkingMode.OFF)
    void reversingTheAxisMirrorsTheAnswer(@ForAll long seed) {
        RandomStacks stacks = new RandomStacks(seed);
        AxisSpec axis = stacks.measuredAxis();
        PlanRequest request = near(stacks.request(axis));
        Answer one = Planner.of(axis).plan(request);
        Answer other = Planner.of(Twins.mirrored(axis)).plan(Twins.mirrored(request));
        if (one instanceof Reached reached) {
            // Of settings that differ only in the side of the error, or in the indices, another may be chosen.
            assertEquals(side(reached.best()).subList(0, 3), side(((Reached) other).best()).subList(0, 3));
            assertEquals(reached.alternatives().size(), ((Reached) other).alternatives().size());
        } else if (one instanceof Nearest nearest) {
            Nearest mirrored = (Nearest) other;
            assertEquals(nearest.reason(), mirrored.reason());
            assertEquals(nearest.below().map(p -> side(p).subList(0, 3)), mirrored.above().map(p -> side(p).subList(0, 3)));
            assertEquals(nearest.above().map(p -> side(p).subList(0, 3)), mirrored.below().map(p -> side(p).subList(0, 3)));
        }
    }

    @Property(tries = TRIES, shrinking = ShrinkingMode.OFF)
    void shiftingDatumAndTargetTogetherChangesThePositionAlone(@ForAll long seed,
            @ForAll @IntRange(min = -999, max = 999) int by) {
        RandomStacks stacks = new RandomStacks(seed);
        AxisSpec axis = stacks.measuredAxis();
        PlanRequest request = near(stacks.request(axis));
        long shift = by * axis.stages().get(0).pitch() / 7;
        Answer one = Planner.of(axis).plan(request);
        Answer other = Planner.of(Twins.shifted(axis, shift)).plan(
                Twins.with(request, request.target() + shift, request.tolerance()));
        assertEquals(changed(one, p -> new PlannedSetting(p.setting(), axis.scale().wrap(p.position() + shift), p.error(),
                p.effortMs(), p.wornStages(), p.steps())), other);
    }

    @Property(tries = TRIES, shrinking = ShrinkingMode.OFF)
    void scalingEveryLengthScalesPositionsAndErrors(@ForAll long seed, @ForAll @IntRange(min = 2, max = 50) int factor) {
        RandomStacks stacks = new RandomStacks(seed);
        AxisSpec axis = stacks.measuredAxis();
        PlanRequest request = near(stacks.request(axis));
        Assume.that(axis.scale().turn() == 0 && Math.abs(request.target()) < FAR / 64 && request.tolerance() < FAR / 64);
        Answer other = Planner.of(Twins.scaled(axis, factor)).plan(
                Twins.with(request, request.target() * factor, request.tolerance() * factor));
        assertEquals(changed(Planner.of(axis).plan(request), p -> new PlannedSetting(p.setting(), p.position() * factor,
                p.error() * factor, p.effortMs(), p.wornStages(), p.steps())), other);
    }

    private static Answer changed(Answer answer, UnaryOperator<PlannedSetting> change) {
        if (answer instanceof Reached reached) {
            return new Reached(change.apply(reached.best()), reached.alternatives().stream().map(change).toList());
        }
        Nearest nearest = (Nearest) answer;
        return new Nearest(nearest.below().map(change), nearest.above().map(change), nearest.reason());
    }

    @Property(tries = TRIES, shrinking = ShrinkingMode.OFF)
    void aLargerToleranceNeverCostsMore(@ForAll long seed, @ForAll @IntRange(min = 0, max = 999) int more) {
        RandomStacks stacks = new RandomStacks(seed);
        AxisSpec axis = stacks.measuredAxis();
        PlanRequest request = near(stacks.request(axis));
        Assume.that(request.tolerance() < FAR);
        Planner planner = Planner.of(axis);
        long wider = request.tolerance() + more * axis.stages().get(0).pitch() / 100;
        assertNotWorse(planner.plan(Twins.with(request, request.target(), wider)), planner.plan(request));
    }

    @Property(tries = TRIES, shrinking = ShrinkingMode.OFF)
    void markingTeethNeverHelps(@ForAll long seed, @ForAll boolean base, @ForAll boolean barred,
            @ForAll @IntRange(min = 0, max = 7) int first, @ForAll @IntRange(min = 0, max = 3) int more) {
        RandomStacks stacks = new RandomStacks(seed);
        AxisSpec axis = stacks.measuredAxis();
        PlanRequest request = near(stacks.request(axis));
        int stage = new Random(seed).nextInt(axis.stages().size());
        WornRange mark = new WornRange(new ToothSpan(first, first + more), barred ? Wear.BARRED : Wear.WORN);
        assertNotWorse(Planner.of(axis).plan(request),
                Planner.of(Twins.marked(axis, stage, base, mark)).plan(request));
    }

    /** A setting over worn teeth, which is offered only for want of a clean one, is worse than any clean one. */
    private static void assertNotWorse(Answer one, Answer other) {
        if (best(other).isPresent()) {
            PlannedSetting worse = best(other).get();
            PlannedSetting better = best(one).orElseThrow(() -> new AssertionError("out of reach, but not " + worse));
            boolean clean = better.wornStages().isEmpty() && !worse.wornStages().isEmpty();
            assertTrue(clean || better.effortMs() <= worse.effortMs(), better + " after " + worse);
        }
    }

    private static Optional<PlannedSetting> best(Answer answer) {
        return answer instanceof Reached reached ? Optional.of(reached.best()) : Optional.empty();
    }

    private static PlanRequest near(PlanRequest request) {
        Assume.that(-FAR < request.target() && request.target() < FAR);
        return request;
    }
}
