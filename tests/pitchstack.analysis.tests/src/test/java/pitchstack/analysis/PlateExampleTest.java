// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchstack.core.plan.Answer.Nearest;
import pitchstack.core.plan.Answer.Reached;
import pitchstack.core.plan.PlannedSetting;
import pitchstack.core.plan.Reason;
import pitchstack.core.stack.Setting;

/**
 * The slide plate, against a search of its own that tries every one of its 23.6 million settings. The numbers are typed
 * here again, from the drawing: rack π mm from −8 to 192 without 76 … 97, where the 20 rider teeth lie over the barred teeth 95 to 97;
 * the 5 and 4.9 mm joints ±16; the 4 and 3.99 mm joints ±5.
 */
class PlateExampleTest {
    private static final long MICROMETRE = 1_000_000_000L;
    /** π mm to the nearest femtometre: 3.141 592 653 589 79 mm (OEIS A000796). */
    private static final long RACK = 3_141_592_653_590L;
    private static final long[] FINE = {5000 * MICROMETRE, 4900 * MICROMETRE, 4000 * MICROMETRE, 3990 * MICROMETRE};
    private static final int[] REACH = {16, 16, 5, 5};
    private static final int HERE = 40;
    private Example plate;

    @BeforeEach
    void load() throws Exception {
        plate = Example.load("slide-plate");
    }

    private record Way(long effortMs, long error, int[] indices) {
        private static final Comparator<Way> ORDER = Comparator.comparingLong(Way::effortMs)
                .thenComparingLong(way -> Math.abs(way.error())).thenComparingLong(Way::error)
                .thenComparing(Way::indices, Arrays::compare);
    }

    @ParameterizedTest
    @CsvSource({"Home, 0, 5", "Edge finder, 12500, 5", "Bore 1, 33330, 5", "Bore 2, 100000, 5", "Here, 125660, 5",
        "Bore 3, 150250, 1", "'Slot, start', 250000, 5", "'Slot, end', 270000, 5", "Bore 4, 310400, 5",
        "Bore 5, 400000, 5", "Bore 6, 512370, 5", "End stop, 600000, 5"})
    void reachesWithTheLeastEffortOfAllSettings(String target, long micrometres, long tolerance) {
        Way least = least(micrometres * MICROMETRE, tolerance * MICROMETRE);
        PlannedSetting best = ((Reached) plate.plan(target)).best();
        assertEquals(least.effortMs(), best.effortMs());
        assertEquals(least.error(), best.error());
        assertEquals(Setting.of(least.indices()), best.setting());
        assertEquals(List.of(), best.wornStages());
    }

    private static Way least(long target, long tolerance) {
        Way[] best = {null};
        for (int a = -REACH[0]; a <= REACH[0]; a++) {
            for (int b = -REACH[1]; b <= REACH[1]; b++) {
                for (int c = -REACH[2]; c <= REACH[2]; c++) {
                    for (int d = -REACH[3]; d <= REACH[3]; d++) {
                        tryRack(target, tolerance, new int[] {0, a, b, c, d}, best);
                    }
                }
            }
        }
        return best[0];
    }

    private static void tryRack(long target, long tolerance, int[] indices, Way[] best) {
        long offset = 0;
        long effort = 0;
        for (int j = 0; j < FINE.length; j++) {
            int index = indices[j + 1];
            offset += FINE[j] * index;
            effort += index == 0 ? 0 : 4000 + 1000L * Math.abs(index);
        }
        for (int n = -8; n <= 192; n++) {
            long position = RACK * n + offset;
            boolean barred = n + 19 >= 95 && n <= 97;
            if (!barred && Math.abs(position - target) <= tolerance && position >= 0 && position <= 600_000 * MICROMETRE) {
                int[] all = indices.clone();
                all[0] = n;
                long rack = n == HERE ? 0 : 6000 + 400L * Math.abs(n - HERE);
                Way way = new Way(effort + rack, position - target, all);
                best[0] = best[0] == null || Way.ORDER.compare(way, best[0]) < 0 ? way : best[0];
            }
        }
    }

    /**
     * By hand: the nearest rack tooth leaves at most π/2 = 1.571 mm; sixteen tenths and five hundredths reach 1.65 mm.
     * Where the rack is barred the pairs have to reach further, which is tried.
     */
    @Test
    void comesWithinHalfAStepOfEveryHundredthOfItsTravel() {
        for (int hundredth = 0; hundredth <= 60_000; hundredth++) {
            assertInstanceOf(Reached.class, plate.plan(10 * MICROMETRE * hundredth, 5 * MICROMETRE),
                    hundredth + " hundredths");
        }
    }

    @Test
    void needsNoLuckForItsStep() {
        // Counting bound: π / 0.01 = 314.2, so fewer than 315 combinations of the printed stages could not be enough.
        int combinations = 33 * 33 * 11 * 11;
        assertEquals(combinations, plate.analysis().spec().stages().stream().skip(1)
                .mapToInt(stage -> stage.rows().indices().count()).reduce(1, (x, y) -> x * y));
        assertTrue(combinations >= 315);
    }

    @Test
    void endsBelowWhatIsOffThePlate() {
        Nearest nearest = (Nearest) plate.plan("Off the plate");
        assertEquals(Reason.BEYOND_TRAVEL, nearest.reason());
        assertFalse(nearest.above().isPresent());
        Optional<Long> below = nearest.below().map(PlannedSetting::position);
        assertTrue(below.orElseThrow() <= 600_000 * MICROMETRE, below.toString());
    }
}
