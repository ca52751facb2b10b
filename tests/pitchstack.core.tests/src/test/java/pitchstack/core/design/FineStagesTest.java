// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** One count is a micrometre unless a test says otherwise. */
final class FineStagesTest {
    private static final Grain MICROMETRES = Grain.of(1);

    /** 1/4 in and 0.24 in differ by 0.010 in, which goes into 1/4 in 25 times. Ten thousandths of an inch. */
    @Test
    void takesTheDifferenceOfTwoPitchesAsTheStep() {
        assertEquals(Optional.of(List.of(new FineStage(2400, 25))), new FineStages(2500, 1000, MICROMETRES).dividing(100));
    }

    /** 5 mm in 50 parts: 4.9 mm over 8 indices, and 8 · 0.1 mm less than 5 mm over ⌈5 / 0.8⌉ = 7. */
    @Test
    void putsTwoStagesWhereOneWouldNeedTooManyIndices() {
        assertEquals(Optional.of(List.of(new FineStage(4200, 7), new FineStage(4900, 8))),
                new FineStages(5000, 3000, MICROMETRES).dividing(100));
    }

    /** 2 mm less 0.1 mm cannot be printed from 3 mm on; 4 mm less 0.1 mm moves the carriage as finely. */
    @Test
    void skipsRackTeethWherePitchesWouldBeTooSmallToPrint() {
        assertEquals(Optional.of(List.of(new FineStage(3900, 20))), new FineStages(2000, 3000, MICROMETRES).dividing(100));
    }

    @Test
    void needsNoPrintedStageWhereTheRackIsFineEnough() {
        assertEquals(Optional.of(List.of()), new FineStages(5000, 3000, MICROMETRES).dividing(5000));
    }

    /** 30³ = 27 000 parts are the most, so 5 mm = 5 · 10⁹ pm go down to ⌈5 · 10⁹ / 27 000⌉ = 185 186 pm. */
    @Test
    void refusesWhatThreeStagesOfThirtyIndicesCannotDivide() {
        FineStages picometres = new FineStages(5_000_000_000L, 0, Grain.of(1));
        assertEquals(185_186, picometres.finest());
        assertEquals(Optional.empty(), picometres.dividing(185_185));
        assertTrue(picometres.dividing(185_186).isPresent());
    }

    /** Pitches in tenths of a millimetre leave none between 4.9 and 5 mm. */
    @Test
    void refusesStepsThatNoPitchThatCanBeWrittenGives() {
        assertEquals(Optional.empty(), new FineStages(5000, 0, Grain.of(100)).dividing(50));
    }

    @Test
    void givesRingsAWholeNumberOfTeeth() {
        long turn = 1_296_000_000L;
        List<FineStage> rings = new FineStages(turn / 360, 0, Grain.rings(turn)).dividing(turn / 3600).orElseThrow();
        assertEquals(List.of(new FineStage(turn / 400, 10)), rings, "1° less 0.9° is a tenth of a degree");
    }

    /** All sums of the differences, around one rack tooth, by listing them. */
    @Test
    void leavesNoGapWiderThanTheStep() {
        long seed = new Random().nextLong();
        Random random = new Random(seed);
        int found = 0;
        for (int i = 0; i < 2000; i++) {
            long rack = 500 + random.nextInt(9500);
            long step = 1 + random.nextInt(200);
            Optional<List<FineStage>> stages = new FineStages(rack, random.nextInt(4000), Grain.of(1 + random.nextInt(5)))
                    .dividing(step);
            if (stages.isPresent()) {
                found++;
                assertTrue(widestGap(rack, stages.get()) <= step, "seed " + seed + ", case " + i + ": " + stages);
            }
        }
        assertTrue(found > 1000, "most cases have an answer: " + found);
    }

    private static long widestGap(long rack, List<FineStage> stages) {
        TreeSet<Long> places = new TreeSet<>(List.of(0L));
        for (FineStage stage : stages) {
            TreeSet<Long> more = new TreeSet<>();
            for (long place : places) {
                for (int index = 0; index < stage.indices(); index++) {
                    more.add(Math.floorMod(place + index * stage.pitch(), rack));
                }
            }
            places = more;
        }
        long widest = places.first() + rack - places.last();
        for (Long place = places.first(); places.higher(place) != null; place = places.higher(place)) {
            widest = Math.max(widest, places.higher(place) - place);
        }
        return widest;
    }
}
