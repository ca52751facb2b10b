// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalLong;
import java.util.function.BiConsumer;
import org.junit.jupiter.api.Test;
import pitchstack.core.plan.Progress;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.RowSpec;
import pitchstack.core.stack.ToothSpan;
import pitchstack.core.stack.Wear;
import pitchstack.core.stack.WornRange;

/** What must follow when a stack or a tolerance is changed, whatever the stack. */
final class CoverageRelationsTest {
    private static final long FIXED_SEED = 977_003;
    private static final int STACKS = 600;
    private static final long SHIFT = 12_345_678_901L;

    /** Half of the stacks are the same on every run. */
    private static void onRandomRacks(BiConsumer<RandomRacks, String> test) {
        long fresh = System.nanoTime();
        for (int i = 0; i < STACKS; i++) {
            long seed = i % 2 == 0 ? FIXED_SEED + i : fresh + i;
            test.accept(new RandomRacks(seed), "seed " + seed);
        }
    }

    private static Coverage coverage(AxisSpec axis, long tolerance) {
        return Reach.of(axis, Progress.NONE).get().coverage(tolerance, Progress.NONE).get();
    }

    @Test
    void aMarkNeverMakesAnythingBetter() {
        onRandomRacks((racks, about) -> {
            AxisSpec axis = racks.axis();
            long tolerance = racks.tolerance(axis);
            WearMark mark = mark(racks, axis);
            Coverage before = coverage(axis, tolerance);
            CoverageChange change = CoverageChange.between(before, coverage(mark.on(axis), tolerance));
            assertEquals(List.of(), change.better(), about);
            if (mark.range().wear() == Wear.WORN) {
                assertEquals(List.of(), change.lost(), about);
            }
        });
    }

    private static WearMark mark(RandomRacks racks, AxisSpec axis) {
        int stage = (int) racks.below(axis.stages().size());
        boolean onBase = racks.oneIn(2);
        RowSpec row = onBase ? axis.stages().get(stage).rows().base() : axis.stages().get(stage).rows().rider();
        int first = (int) racks.below(row.teeth());
        return new WearMark(stage, onBase ? WearMark.Row.BASE : WearMark.Row.RIDER, new WornRange(
                new ToothSpan(first, first + (int) racks.below(4)), racks.oneIn(2) ? Wear.WORN : Wear.BARRED));
    }

    @Test
    void aLargerToleranceNeverLosesAnything() {
        onRandomRacks((racks, about) -> {
            AxisSpec axis = racks.axis();
            long tolerance = Math.min(racks.tolerance(axis), 1L << 50);
            long more = tolerance + 1 + racks.below(axis.stages().get(0).pitch());
            CoverageChange change = CoverageChange.between(coverage(axis, tolerance), coverage(axis, more));
            assertEquals(change.changed(), change.better(), about);
        });
    }

    @Test
    void movingDatumAndStopsMovesEverythingElse() {
        onRandomRacks((racks, about) -> {
            AxisSpec axis = racks.axis();
            if (axis.scale().turn() > 0) {
                return;
            }
            long tolerance = racks.tolerance(axis);
            AxisSpec moved = KnownStacks.moved(axis, axis.datum() + SHIFT, plus(axis.low()), plus(axis.high()));
            assertEquals(coverage(axis, tolerance).stretches().stream()
                    .map(s -> new Stretch(s.low() + SHIFT, s.high() + SHIFT, s.reached())).toList(),
                    coverage(moved, tolerance).stretches(), about);
        });
    }

    private static OptionalLong plus(OptionalLong stop) {
        return stop.isPresent() ? OptionalLong.of(stop.getAsLong() + SHIFT) : stop;
    }

    @Test
    void theAxisSeenFromItsOtherEndIsReachedInMirrorImage() {
        onRandomRacks((racks, about) -> {
            AxisSpec axis = racks.axis();
            if (axis.scale().turn() > 0) {
                return;
            }
            long tolerance = racks.tolerance(axis);
            List<Stretch> mirrored = new ArrayList<>(coverage(axis, tolerance).stretches());
            Collections.reverse(mirrored);
            assertEquals(mirrored.stream().map(s -> new Stretch(-s.high(), -s.low(), s.reached())).toList(),
                    coverage(KnownStacks.mirrored(axis), tolerance).stretches(), about);
        });
    }

    @Test
    void scalingEveryLengthScalesWhatIsReached() {
        onRandomRacks((racks, about) -> {
            AxisSpec axis = racks.axis();
            if (axis.scale().turn() > 0) {
                return;
            }
            long times = 2 + racks.below(1000);
            long tolerance = Math.min(racks.tolerance(axis), 1L << 40);
            AxisSpec scaled = KnownStacks.scaled(axis, times);
            Reach reach = Reach.of(scaled, Progress.NONE).get();
            for (Stretch stretch : coverage(axis, tolerance).stretches()) {
                Coverage large = reach.coverage(tolerance * times, Progress.NONE).get();
                assertEquals(stretch.reached(), large.at(stretch.low() * times), about);
                assertEquals(stretch.reached(), large.at(stretch.high() * times), about);
            }
        });
    }

    @Test
    void theChangeBetweenTwoCoveragesIsWhereTheyDiffer() {
        onRandomRacks((racks, about) -> {
            Coverage before = coverage(racks.axis(), racks.below(1000));
            Coverage after = coverage(racks.axis(), racks.below(1000));
            CoverageChange change = CoverageChange.between(before, after);
            List<Long> edges = new ArrayList<>();
            for (Coverage one : List.of(before, after)) {
                one.stretches().stream().limit(500)
                        .forEach(s -> edges.addAll(List.of(s.low() - 1, s.low(), s.high(), s.high() + 1)));
            }
            for (long edge : edges) {
                List<CoverageChange.Changed> here = change.changed().stream()
                        .filter(c -> c.low() <= edge && edge <= c.high()).toList();
                assertEquals(before.at(edge) == after.at(edge) ? 0 : 1, here.size(), about);
                here.forEach(c -> assertTrue(c.before() == before.at(edge) && c.after() == after.at(edge), about));
            }
        });
    }

    @Test
    void inchAndMillimetreSpellingsOfOneStackAreReachedAlike() {
        List<String> inch = List.of("1/4 in", "0.24 in");
        List<String> millimetre = List.of("6.35 mm", "6.096 mm");
        assertEquals(coverage(fence(inch), KnownStacks.MM.parse("0.005 in")).stretches(),
                coverage(fence(millimetre), KnownStacks.MM.parse("0.127 mm")).stretches());
    }

    private static AxisSpec fence(List<String> pitches) {
        return KnownStacks.axis(pitches.stream().map(p -> KnownStacks.stage(KnownStacks.MM.parse(p), 0, 80, 12)).toList(),
                OptionalLong.empty(), OptionalLong.empty(), List.of());
    }
}
