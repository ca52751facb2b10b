// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalLong;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import pitchstack.core.plan.Answer;
import pitchstack.core.plan.PlanRequest;
import pitchstack.core.plan.Planner;
import pitchstack.core.plan.Progress;
import pitchstack.core.plan.RandomStacks;
import pitchstack.core.plan.WornPolicy;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.IndexErrors;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.ToothSpan;
import pitchstack.core.stack.Wear;
import pitchstack.core.stack.WornRange;

final class EffortMapTest {
    private static final long FIXED_SEED = 70_121;
    private static final int FIXED_STACKS = 1_500;
    private static final int FRESH_STACKS = 400;
    private static final int MOST_CELLS = 3_000;
    private static final int CELLS_COMPARED = 25;
    private int reached;

    @Test
    void agreesWithBruteForceOnStacksFromAFixedSeed() {
        for (int i = 0; i < FIXED_STACKS; i++) {
            compare(FIXED_SEED + i);
        }
        assertTrue(reached > 2 * FIXED_STACKS, "reached cells were compared only " + reached + " times");
    }

    @Test
    void agreesWithBruteForceOnStacksFromAFreshSeed() {
        long seed = System.nanoTime();
        for (int i = 0; i < FRESH_STACKS; i++) {
            compare(seed + i);
        }
    }

    private void compare(long seed) {
        RandomRacks racks = new RandomRacks(seed);
        AxisSpec axis = racks.oneIn(3) ? new RandomStacks(seed).axis() : racks.axis();
        Setting from = Setting.of(axis.stages().stream().mapToInt(stage -> start(racks, stage)).toArray());
        long tolerance = racks.tolerance(axis);
        Coverage coverage = Reach.of(axis, Progress.NONE).get().coverage(tolerance, Progress.NONE).get();
        List<Stretch> all = coverage.stretches();
        long span = all.isEmpty() ? 0 : all.get(all.size() - 1).high() - all.get(0).low();
        EffortMap map = EffortReach.of(axis, from, Progress.NONE).get()
                .map(racks.below(1000), Math.max(racks.step(axis), span / MOST_CELLS), tolerance, Progress.NONE).get();
        Oracle oracle = new Oracle(axis);
        String about = "seed " + seed + ", tolerance " + tolerance + ", from " + from + "\n" + axis;
        for (int i = 0; i < Math.min(CELLS_COMPARED, map.cells()); i++) {
            int cell = (int) racks.below(map.cells());
            OptionalLong effort = oracle.leastEffort(map.position(cell), tolerance, from);
            assertEquals(effort, map.effortMs(cell), () -> "at " + map.position(cell) + ", " + about);
            assertEquals(coverage.at(map.position(cell)), map.reached(cell), about);
            reached += effort.isPresent() ? 1 : 0;
        }
    }

    /** Mostly in the range, sometimes not. */
    private static int start(RandomRacks racks, StageSpec stage) {
        IndexRange range = stage.rows().indices();
        return range.first() + (int) racks.below(range.count()) + (racks.oneIn(8) ? range.count() : 0);
    }

    /** The first four cases of problem A, each found by brute force: rack release 4 s, fine release 2 s, 1 s a tooth. */
    @Test
    void hasTheKnownEffortsOfProblemA() {
        AxisSpec a = KnownStacks.problemA();
        for (int j = 0; j < 3; j++) {
            StageSpec s = a.stages().get(j);
            a = a.withStage(j, new StageSpec(s.name(), s.source(), s.nominalPitch(), s.pitch(), s.rows(),
                    new EffortCost(j == 0 ? 4000 : 2000, 1000)));
        }
        EffortReach reach = EffortReach.of(a, Setting.zero(3), Progress.NONE).get();
        EffortMap map = reach.map(0, KnownStacks.mm("0.01"), KnownStacks.mm("0.01"), Progress.NONE).get();
        assertEquals(OptionalLong.of(64_000), at(map, "100"));
        assertEquals(OptionalLong.of(64_000), at(map, "100.01"));
        assertEquals(OptionalLong.of(409_000), at(map, "1001.3"));
        EffortMap exact = reach.map(0, KnownStacks.mm("0.01"), KnownStacks.mm("0.01") - 1, Progress.NONE).get();
        assertEquals(OptionalLong.of(64_000), at(exact, "100"));
        assertEquals(OptionalLong.empty(), at(exact, "100.01"));
    }

    /**
     * A rack measured tooth by tooth under three stages of 10 648 different offsets, with some 360 cells in a lap: more
     * than small stacks have of either. The planner, itself compared with brute force, says what is least.
     */
    @Test
    void agreesWithThePlannerOnALongMeasuredRackWithManyOffsets() {
        long[] pitches = {KnownStacks.mm("2.54"), KnownStacks.mm("5"), KnownStacks.mm("4.9") + 7_919,
            KnownStacks.mm("3.3") + 104_729};
        Random random = new Random(FIXED_SEED);
        TreeMap<Integer, Long> errors = new TreeMap<>();
        for (int n = 0; n < 120; n++) {
            errors.put(n, random.nextLong(-KnownStacks.mm("0.05"), KnownStacks.mm("0.05")));
        }
        List<StageSpec> stages = IntStream.range(0, pitches.length).mapToObj(j -> KnownStacks.stage(pitches[j],
                j == 0 ? 0 : -11, j == 0 ? 120 : 22, 5)).map(s -> new StageSpec(s.name(), s.source(), s.nominalPitch(),
                        s.pitch(), s.rows(), new EffortCost(2000, 1000))).toList();
        AxisSpec axis = KnownStacks.axis(stages, OptionalLong.empty(), OptionalLong.empty(), List.of())
                .withStage(0, stages.get(0).withErrors(IndexErrors.of(errors)));
        Setting from = Setting.of(47, 2, -3, 0);
        Planner planner = Planner.of(axis);
        for (String tolerance : List.of("0.005", "0.00002")) {
            long within = KnownStacks.mm(tolerance);
            EffortMap map = EffortReach.of(axis, from, Progress.NONE).get()
                    .map(0, KnownStacks.mm("0.007"), within, Progress.NONE).get();
            for (int i = 0; i < 600; i++) {
                int cell = random.nextInt(map.cells());
                Answer answer = planner.plan(new PlanRequest(map.position(cell), within, from, WornPolicy.AVOID, 0));
                assertEquals(answer instanceof Answer.Reached found ? OptionalLong.of(found.best().effortMs())
                        : OptionalLong.empty(), map.effortMs(cell), () -> "at " + map.position(cell));
            }
        }
    }

    private static OptionalLong at(EffortMap map, String position) {
        return map.effortMs(IntStream.range(0, map.cells()).filter(i -> map.position(i) == KnownStacks.mm(position))
                .findFirst().orElseThrow());
    }

    @Test
    void addingAMarkNeverLowersAnEffort() {
        for (int i = 0; i < 200; i++) {
            RandomRacks racks = new RandomRacks(FIXED_SEED + i);
            AxisSpec axis = racks.axis();
            Setting from = Setting.zero(axis.stages().size());
            long tolerance = racks.tolerance(axis);
            WearMark mark = new WearMark(0, WearMark.Row.BASE, new WornRange(
                    new ToothSpan(0, (int) racks.below(5)), Wear.BARRED));
            long step = 1 + axis.stages().get(0).pitch() / 3;
            EffortMap before = EffortReach.of(axis, from, Progress.NONE).get()
                    .map(0, step, tolerance, Progress.NONE).get();
            EffortMap after = EffortReach.of(mark.on(axis), from, Progress.NONE).get()
                    .map(0, step, tolerance, Progress.NONE).get();
            for (int cell = 0; cell < before.cells(); cell++) {
                if (before.reached(cell) == after.reached(cell) && before.reached(cell) != Reached.NOT) {
                    assertTrue(after.effortMs(cell).getAsLong() >= before.effortMs(cell).getAsLong(), "seed " + i);
                }
            }
        }
    }

    @Test
    void refusesEffortsBeyondTwelveDaysAndSettingsOfAnotherSize() {
        AxisSpec a = KnownStacks.problemA();
        StageSpec rack = a.stages().get(0);
        AxisSpec dear = a.withStage(0, new StageSpec(rack.name(), rack.source(), rack.nominalPitch(), rack.pitch(),
                rack.rows(), new EffortCost(0, 1_100_000)));
        assertInstanceOf(Outcome.Refused.class, EffortReach.of(dear, Setting.zero(3), Progress.NONE));
        assertThrows(IllegalArgumentException.class, () -> EffortReach.of(a, Setting.zero(2), Progress.NONE));
    }
}
