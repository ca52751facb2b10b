// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicIntegerArray;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import pitchstack.core.plan.Progress;
import pitchstack.core.plan.RandomStacks;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Wear;

final class CoverageAgainstBruteForceTest {
    private static final long FIXED_SEED = 41_077;
    private static final int FIXED_STACKS = 4_000;
    private static final int FRESH_STACKS = 1_000;
    private final AtomicIntegerArray met = new AtomicIntegerArray(Reached.values().length);

    @Test
    void agreesOnStacksFromAFixedSeed() {
        // One stack has nothing to do with another, so all processors can work on them.
        LongStream.range(FIXED_SEED, FIXED_SEED + FIXED_STACKS).parallel().forEach(this::compare);
        for (Reached reached : Reached.values()) {
            assertTrue(met.get(reached.ordinal()) > FIXED_STACKS / 2, reached + " was met too seldom to say much");
        }
    }

    @Test
    void agreesOnStacksFromAFreshSeed() {
        long seed = System.nanoTime();
        LongStream.range(seed, seed + FRESH_STACKS).parallel().forEach(this::compare);
    }

    private void compare(long seed) {
        RandomRacks racks = new RandomRacks(seed);
        AxisSpec axis = racks.oneIn(2) ? racks.axis() : new RandomStacks(seed).axis();
        Reach reach = Reach.of(axis, Progress.NONE).get();
        Oracle oracle = new Oracle(axis);
        long tolerance = racks.tolerance(axis);
        String about = "seed " + seed + ", tolerance " + tolerance + "\n" + axis;
        Coverage coverage = reach.coverage(tolerance, Progress.NONE).get();
        compareStretches(coverage, oracle, about);
        compareGrid(reach, coverage, oracle, racks, about);
        compareWays(reach, oracle, tolerance, about);
        compareFinestStep(reach, oracle, Wear.CLEAN, oracle.clean(), about);
        compareFinestStep(reach, oracle, Wear.WORN, oracle.usable(), about);
    }

    private void compareStretches(Coverage coverage, Oracle oracle, String about) {
        TreeSet<Long> edges = oracle.edges(coverage.tolerance());
        Stretch before = null;
        for (Stretch stretch : coverage.stretches()) {
            assertTrue(stretch.low() <= stretch.high(), about);
            if (before != null) {
                assertTrue(before.high() < stretch.low(), about);
                assertTrue(before.reached() != stretch.reached() || before.high() + 1 < stretch.low(), about);
            }
            edges.addAll(List.of(stretch.low() - 1, stretch.low(), stretch.high(), stretch.high() + 1));
            before = stretch;
            met.incrementAndGet(stretch.reached().ordinal());
        }
        for (long edge : edges) {
            assertEquals(oracle.at(edge, coverage.tolerance()), coverage.at(edge), () -> "at " + edge + ", " + about);
            assertEquals(oracle.inTravel(edge), coverage.stretches().stream().anyMatch(s -> s.contains(edge)),
                    () -> "travel at " + edge + ", " + about);
        }
    }

    /** Exact stretches have been compared at every edge, so they can speak for the cells of a grid. */
    private static void compareGrid(Reach reach, Coverage coverage, Oracle oracle, RandomRacks racks, String about) {
        long step = Math.max(racks.step(reach.axis()), span(coverage) / 5_000);
        long origin = racks.below(3 * step) - step;
        GridCoverage grid = reach.grid(origin, step, coverage.tolerance(), Progress.NONE).get();
        long cells = 0;
        for (long at : multiples(coverage, origin, step)) {
            int cell = (int) cells++;
            assertEquals(at, grid.position(cell), about);
            assertEquals(coverage.at(at), grid.reached(cell),
                    () -> "cell " + cell + " at " + at + ", step " + step + ", origin " + origin + ", " + about);
        }
        assertEquals(cells, grid.cells(), about);
        for (int i = 0; i < Math.min(3, cells); i++) {
            int cell = (int) racks.below(cells);
            assertEquals(oracle.at(grid.position(cell), coverage.tolerance()), grid.reached(cell), about);
        }
    }

    private static long span(Coverage coverage) {
        List<Stretch> all = coverage.stretches();
        return all.isEmpty() ? 0 : all.get(all.size() - 1).high() - all.get(0).low();
    }

    /** The multiples in the travel; on a rotary axis those of the first one at or above 0. */
    private static List<Long> multiples(Coverage coverage, long origin, long step) {
        List<Long> multiples = new ArrayList<>();
        for (Stretch stretch : coverage.stretches()) {
            long next = stretch.low() + Math.floorMod(origin - stretch.low(), step);
            for (; next <= stretch.high(); next += step) {
                multiples.add(next);
            }
        }
        return multiples;
    }

    private static void compareWays(Reach reach, Oracle oracle, long tolerance, String about) {
        int seen = 0;
        for (long edge : oracle.edges(tolerance)) {
            if (seen++ % 5 == 0) {
                long clean = oracle.count(oracle.clean(), edge, tolerance);
                assertEquals(new Ways(clean, oracle.count(oracle.usable(), edge, tolerance) - clean),
                        reach.ways(edge, tolerance), () -> "at " + edge + ", " + about);
            }
        }
    }

    /** The tolerance found closes every gap, the next smaller one does not, and the spacing is that of the list. */
    private static void compareFinestStep(Reach reach, Oracle oracle, Wear worst, List<Long> places, String about) {
        Optional<FinestStep> found = reach.finestStep(worst, Progress.NONE).get();
        assertEquals(places.isEmpty(), found.isEmpty(), about);
        if (found.isEmpty()) {
            return;
        }
        long tolerance = found.get().tolerance();
        assertTrue(isClosed(reach, worst, tolerance), about);
        assertTrue(tolerance == 0 || !isClosed(reach, worst, tolerance - 1), about);
        if (reach.axis().scale().turn() == 0) {
            List<Long> sorted = places.stream().sorted().distinct().toList();
            long widest = 0;
            for (int i = 1; i < sorted.size(); i++) {
                widest = Math.max(widest, sorted.get(i) - sorted.get(i - 1));
            }
            assertEquals(widest, found.get().spacing(), about);
        }
    }

    private static boolean isClosed(Reach reach, Wear worst, long tolerance) {
        return reach.coverage(tolerance, Progress.NONE).get().stretches().stream().allMatch(stretch ->
                worst == Wear.CLEAN ? stretch.reached() == Reached.CLEAN : stretch.reached() != Reached.NOT);
    }
}
