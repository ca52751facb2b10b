// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalLong;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;
import pitchstack.core.plan.Answer;
import pitchstack.core.plan.PlanRequest;
import pitchstack.core.plan.Planner;
import pitchstack.core.plan.Progress;
import pitchstack.core.plan.WornPolicy;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.Wear;

/** How coverage, efforts and plans must agree, and change with the axis. Axes follow from a seed. */
class CoverageProperties {
    private static final int TRIES = 500;
    private static final int MOST_CELLS = 400;
    private static final int MOST_STRETCHES = 40;
    private static final long FAR = 1L << 50;

    private static Coverage coverage(AxisSpec axis, long tolerance) {
        return Reach.of(axis, Progress.NONE).get().coverage(tolerance, Progress.NONE).get();
    }

    private static EffortMap efforts(AxisSpec axis, Setting from, long origin, long step, long tolerance) {
        return EffortReach.of(axis, from, Progress.NONE).get().map(origin, step, tolerance, Progress.NONE).get();
    }

    /** Without limits between bodies, which could forbid the way to a setting that is reached in itself. */
    private static AxisSpec free(RandomRacks racks) {
        AxisSpec axis = racks.axis();
        return new AxisSpec(axis.name(), axis.scale(), axis.stages(), axis.datum(), axis.low(), axis.high(), List.of(),
                axis.tolerance(), axis.wantedStep());
    }

    private static Setting start(RandomRacks racks, AxisSpec axis) {
        return Setting.of(axis.stages().stream().map(s -> s.rows().indices())
                .mapToInt((IndexRange r) -> r.first() + (int) racks.below(r.count())).toArray());
    }

    private static long step(RandomRacks racks, AxisSpec axis, long tolerance) {
        List<Stretch> all = coverage(axis, tolerance).stretches();
        long span = all.isEmpty() ? 0 : all.get(all.size() - 1).high() - all.get(0).low();
        return Math.max(racks.step(axis), span / MOST_CELLS + 1);
    }

    private static Answer plan(Planner planner, long target, long tolerance, Setting from) {
        return planner.plan(new PlanRequest(target, tolerance, from, Directions.unknown(from.size()), WornPolicy.AVOID,
                0));
    }

    private static Reached reached(Answer answer) {
        return !(answer instanceof Answer.Reached found) ? Reached.NOT
                : found.best().wornStages().isEmpty() ? Reached.CLEAN : Reached.WORN;
    }

    @Property(tries = TRIES, shrinking = ShrinkingMode.OFF)
    void thePlannerReachesExactlyWhatTheCoverageSays(@ForAll long seed) {
        RandomRacks racks = new RandomRacks(seed);
        AxisSpec axis = free(racks);
        long tolerance = Math.min(racks.tolerance(axis), FAR);
        Planner planner = Planner.of(axis);
        Setting from = start(racks, axis);
        coverage(axis, tolerance).stretches().stream().limit(MOST_STRETCHES).forEach(stretch -> {
            for (long target : new long[] {stretch.low(), stretch.low() + racks.below(stretch.size()), stretch.high()}) {
                assertEquals(stretch.reached(), reached(plan(planner, target, tolerance, from)),
                        () -> target + " in " + stretch);
            }
        });
    }

    @Property(tries = TRIES, shrinking = ShrinkingMode.OFF)
    void theMapOfEffortsHoldsWhatThePlannerSpends(@ForAll long seed) {
        RandomRacks racks = new RandomRacks(seed);
        AxisSpec axis = free(racks);
        long tolerance = Math.min(racks.tolerance(axis), FAR);
        Planner planner = Planner.of(axis);
        Setting from = start(racks, axis);
        EffortMap map = efforts(axis, from, 0, step(racks, axis, tolerance), tolerance);
        for (int cell = (int) racks.below(7); cell < map.cells(); cell += 7) {
            Answer answer = plan(planner, map.position(cell), tolerance, from);
            assertEquals(answer instanceof Answer.Reached found ? OptionalLong.of(found.best().effortMs())
                    : OptionalLong.empty(), map.effortMs(cell));
            assertEquals(reached(answer), map.reached(cell));
        }
    }

    @Property(tries = TRIES, shrinking = ShrinkingMode.OFF)
    void aLargerToleranceNeverCostsMore(@ForAll long seed, @ForAll @IntRange(min = 0, max = 300) int more) {
        RandomRacks racks = new RandomRacks(seed);
        AxisSpec axis = racks.axis();
        long tolerance = Math.min(racks.tolerance(axis), FAR);
        Setting from = start(racks, axis);
        long step = step(racks, axis, tolerance);
        EffortMap tight = efforts(axis, from, 0, step, tolerance);
        EffortMap loose = efforts(axis, from, 0, step, tolerance + more * axis.stages().get(0).pitch() / 100);
        for (int cell = 0; cell < tight.cells(); cell++) {
            assertTrue(loose.reached(cell).compareTo(tight.reached(cell)) <= 0);
            if (loose.reached(cell) == tight.reached(cell) && tight.effortMs(cell).isPresent()) {
                assertTrue(loose.effortMs(cell).getAsLong() <= tight.effortMs(cell).getAsLong());
            }
        }
    }

    @Property(tries = TRIES, shrinking = ShrinkingMode.OFF)
    void theAxisSeenFromItsOtherEndCostsTheSame(@ForAll long seed) {
        RandomRacks racks = new RandomRacks(seed);
        AxisSpec axis = racks.axis();
        Assume.that(axis.scale().turn() == 0);
        long tolerance = racks.tolerance(axis);
        Setting from = start(racks, axis);
        long step = step(racks, axis, tolerance);
        long origin = racks.below(step);
        EffortMap one = efforts(axis, from, origin, step, tolerance);
        EffortMap other = efforts(KnownStacks.mirrored(axis),
                Setting.of(from.toList().stream().mapToInt(n -> -n).toArray()), -origin, step, tolerance);
        assertEquals(one.cells(), other.cells());
        for (int cell = 0; cell < one.cells(); cell++) {
            int twin = one.cells() - 1 - cell;
            assertEquals(-one.position(cell), other.position(twin));
            assertEquals(one.reached(cell), other.reached(twin));
            assertEquals(one.effortMs(cell), other.effortMs(twin));
        }
    }

    @Property(tries = TRIES, shrinking = ShrinkingMode.OFF)
    void movingAndScalingEverythingKeepsTheEfforts(@ForAll long seed, @ForAll @IntRange(min = 2, max = 99) int times) {
        RandomRacks racks = new RandomRacks(seed);
        AxisSpec axis = racks.axis();
        Assume.that(axis.scale().turn() == 0);
        long tolerance = Math.min(racks.tolerance(axis), FAR / 100);
        Setting from = start(racks, axis);
        long step = step(racks, axis, tolerance);
        long shift = times * step / 3;
        EffortMap one = efforts(axis, from, 0, step, tolerance);
        AxisSpec moved = KnownStacks.moved(axis, axis.datum() + shift, plus(axis.low(), shift),
                plus(axis.high(), shift));
        same(one, efforts(moved, from, shift, step, tolerance), 1, shift);
        same(one, efforts(KnownStacks.scaled(axis, times), from, 0, step * times, tolerance * times), times, 0);
    }

    private static OptionalLong plus(OptionalLong stop, long shift) {
        return stop.isPresent() ? OptionalLong.of(stop.getAsLong() + shift) : stop;
    }

    private static void same(EffortMap one, EffortMap other, long times, long shift) {
        assertEquals(one.cells(), other.cells());
        for (int cell = 0; cell < one.cells(); cell++) {
            assertEquals(one.position(cell) * times + shift, other.position(cell));
            assertEquals(one.reached(cell), other.reached(cell));
            assertEquals(one.effortMs(cell), other.effortMs(cell));
        }
    }

    /** The smallest tolerance that leaves no gap comes from the gaps, and these from the coverage. */
    @Property(tries = TRIES, shrinking = ShrinkingMode.OFF)
    void scalingScalesTheFinestStep(@ForAll long seed, @ForAll @IntRange(min = 2, max = 99) int times) {
        AxisSpec axis = new RandomRacks(seed).axis();
        Assume.that(axis.scale().turn() == 0);
        var one = Reach.of(axis, Progress.NONE).get().finestStep(Wear.WORN, Progress.NONE).get();
        var other = Reach.of(KnownStacks.scaled(axis, times), Progress.NONE).get()
                .finestStep(Wear.WORN, Progress.NONE).get();
        assertEquals(one.map(f -> f.spacing() * times), other.map(FinestStep::spacing));
    }
}
