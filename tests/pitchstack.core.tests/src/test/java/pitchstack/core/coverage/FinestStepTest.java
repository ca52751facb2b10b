// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pitchstack.core.coverage.KnownStacks.axis;
import static pitchstack.core.coverage.KnownStacks.mm;
import static pitchstack.core.coverage.KnownStacks.stage;

import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchstack.core.plan.Progress;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.Wear;
import pitchstack.core.units.Pitch;

final class FinestStepTest {
    private static final long MICROMETRE = 1_000_000_000L;

    private static FinestStep finest(AxisSpec axis) {
        return Reach.of(axis, Progress.NONE).get().finestStep(Wear.CLEAN, Progress.NONE).get().orElseThrow();
    }

    /** Far from the ends of a long rack, between stops. */
    private static AxisSpec between(List<StageSpec> stages, String low, String high) {
        return axis(stages, OptionalLong.of(mm(low)), OptionalLong.of(mm(high)), List.of());
    }

    /**
     * The three-distance theorem (Sós, Surányi, Świerczkowski 1957–58): n points k·α on a circle leave gaps of at most
     * three lengths. The widest for some pitches, worked out with fractions.
     */
    @ParameterizedTest
    @CsvSource({
        "5 mm, 4.9 mm, 2, 4.9", "5 mm, 4.9 mm, 10, 4.1", "5 mm, 4.9 mm, 25, 2.6", "5 mm, 4.9 mm, 49, 0.2",
        "5 mm, 4.9 mm, 50, 0.1", "5 mm, 4.9 mm, 70, 0.1",
        "2.54 mm, 2.5 mm, 63, 0.06", "2.54 mm, 2.5 mm, 100, 0.04", "2.54 mm, 2.5 mm, 127, 0.02",
        "module 1, 3 mm, 10, 1.867259", "module 1, 3 mm, 22, 0.168147", "module 1, 3 mm, 23, 0.141593",
        "module 1, 3 mm, 30, 0.141593", "module 1, 3 mm, 100, 0.061930"})
    void isTheWidestGapOfTheThreeDistanceTheorem(String rack, String fine, int positions, String widestMm) {
        long coarse = Pitch.parse(rack).units(KnownStacks.MM);
        FinestStep found = finest(between(List.of(stage(coarse, 0, 400, 20),
                stage(Pitch.parse(fine).units(KnownStacks.MM), 0, positions, 5)), "400", "700"));
        // The widths are known to a nanometre; a rounded pitch is half a femtometre off, 400 of them 200.
        assertEquals(mm(widestMm), found.spacing(), 500_500.0);
        assertEquals(found.spacing() / 2, found.tolerance());
    }

    /** Steps of 5 and 4.9 mm, up to B each way, leave 4.9 mm at the ends for every B: closed form. */
    @ParameterizedTest
    @CsvSource({"1", "5", "10", "24", "25", "49"})
    void isWideAtTheEndsOfTheTravel(int most) {
        AxisSpec pair = axis(List.of(stage(mm("5"), -most, 2 * most + 1, 5),
                stage(mm("4.9"), -most, 2 * most + 1, 5)), OptionalLong.empty(), OptionalLong.empty(),
                List.of());
        assertEquals(new FinestStep(mm("4.9"), mm("2.45")), finest(pair));
    }

    /** 115 fine combinations cannot lie every 20 µm on 2.54 mm, which takes 127. */
    @Test
    void ofProblemAIsCoarserThanItsGrid() {
        AxisSpec a = KnownStacks.problemA();
        AxisSpec middle = KnownStacks.moved(a, 0, OptionalLong.of(mm("100")), OptionalLong.of(mm("2400")));
        FinestStep found = finest(middle);
        assertTrue(found.spacing() > 20 * MICROMETRE, () -> "spacing " + found.spacing());
    }

    /** F combinations of the fine stages leave a spacing of at least P / F on each pitch P of the coarse one. */
    @Test
    void isNeverFinerThanTheCountOfCombinationsAllows() {
        long fresh = System.nanoTime();
        for (int i = 0; i < 300; i++) {
            long seed = i % 2 == 0 ? 3_301 + i : fresh + i;
            RandomRacks racks = new RandomRacks(seed);
            long coarse = 1_000 + racks.below(100_000);
            int one = 1 + (int) racks.below(12);
            int two = 1 + (int) racks.below(12);
            AxisSpec rack = axis(List.of(stage(coarse, 0, 60, 3), stage(1 + racks.below(coarse), 0, one, 3),
                    stage(1 + racks.below(coarse), 0, two, 3)), OptionalLong.of(30 * coarse),
                    OptionalLong.of(50 * coarse), List.of());
            assertTrue(finest(rack).spacing() * one * two >= coarse, "seed " + seed);
        }
    }
}
