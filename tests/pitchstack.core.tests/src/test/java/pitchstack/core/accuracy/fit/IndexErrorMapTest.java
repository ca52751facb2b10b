// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pitchstack.core.Stacks;
import pitchstack.core.stack.Direction;
import pitchstack.core.stack.IndexErrors;
import pitchstack.core.stack.Setting;
import pitchstack.core.units.RotaryScale;

/** Errors of single indices that were put in come out. */
class IndexErrorMapTest {
    /** Errors of rack indices without mean and without slope, so that the fit leaves them alone. */
    private static final double[] ERRORS_M = {10e-6, -20e-6, 0, 20e-6, -10e-6};
    private static final int STEP = 50;

    /** Readings over the rack, shifted by the errors, and over the other two stages. */
    private static List<Reading> readings(double scatterM, int repeats) {
        MadeUpDevice device = new MadeUpDevice(11, scatterM, 0);
        List<Reading> readings = new ArrayList<>();
        for (int repeat = 0; repeat < repeats; repeat++) {
            for (int i = 0; i < ERRORS_M.length; i++) {
                // Mirrored halves: the errors sum to 0, and so do the errors times the index.
                Reading r = device.read(Setting.of(i * STEP, 0, 0), Direction.UNKNOWN, 20, 1e-6);
                readings.add(new Reading(r.setting(), r.positionM() + ERRORS_M[i], r.direction(), 1e-6, 20));
            }
            for (int index : new int[] {-10, 10}) {
                readings.add(device.read(Setting.of(0, index, 0), Direction.UNKNOWN, 20, 1e-6));
                readings.add(device.read(Setting.of(0, 0, index), Direction.UNKNOWN, 20, 1e-6));
            }
        }
        return readings;
    }

    private static IndexErrorMap map(double scatterM, int repeats) {
        return IndexErrorMap.of(MadeUpDevice.fit(readings(scatterM, repeats), FitOptions.USUAL), 0).orElseThrow();
    }

    /** The slope of the line that the fit takes out of the errors, by hand, and what is then left of them. */
    private static double[] left(PitchFit fit) {
        double[] left = new double[ERRORS_M.length];
        double mean = 0;
        for (int i = 0; i < left.length; i++) {
            left[i] = ERRORS_M[i] - (fit.correction(0).value() - new MadeUpDevice(11, 0, 0).corrections[0]) * 2.54e-3 * i * STEP;
            mean += left[i] / left.length;
        }
        for (int i = 0; i < left.length; i++) {
            left[i] -= mean;
        }
        return left;
    }

    @Test
    void findsWhatIsLeftBesideThePitch() {
        double[] left = left(MadeUpDevice.fit(readings(0, 2), FitOptions.USUAL));
        IndexErrorMap map = map(0, 2);
        assertEquals(List.of(0, 50, 100, 150, 200), List.copyOf(map.byIndex().keySet()));
        for (int i = 0; i < ERRORS_M.length; i++) {
            assertEquals(left[i], map.byIndex().get(i * STEP).value(), 1e-12);
        }
        // Together with the fitted pitch the map says where the body stands, up to one shift of all.
        assertEquals(0, map.byIndex().values().stream().mapToDouble(Estimate::value).sum(), 1e-15);
    }

    @Test
    void keepsOnlyErrorsThatStandOutOfTheScatter() {
        IndexErrorMap map = map(1e-6, 10);
        assertEquals(9 * 5, map.freedom());
        assertEquals(1e-6, map.deviationM(), 0.3e-6);
        assertEquals(map.deviationM() / Math.sqrt(10), map.byIndex().get(50).uncertainty(), 1e-15);
        assertTrue(map.significant().byIndex().containsKey(50));
        assertTrue(map(1e-4, 10).significant().byIndex().size() <= 1);
    }

    /** Repeats that agree to the last digit are as good as the reading says, 1 µm, over √2. */
    @Test
    void doesNotTakeRepeatsThatAgreeForCertainty() {
        assertEquals(1e-6 / Math.sqrt(2), map(0, 2).byIndex().get(50).uncertainty(), 1e-15);
    }

    @Test
    void givesCountsOfTheScale() {
        IndexErrorMap map = map(0, 2);
        IndexErrors linear = map.errors(Stacks.LINEAR);
        assertEquals(Math.round(map.byIndex().get(50).value() * 1e15), linear.at(50));
        assertEquals(0, linear.at(51));
        RotaryScale ring = new RotaryScale(1_296_000_000L);
        // A radian is 206 264.806 arc seconds of a thousand counts here.
        assertEquals(Math.round(map.byIndex().get(50).value() * 206_264_806.247), map.errors(ring).at(50));
    }

    @Test
    void saysNothingWithoutRepeatsOrWithTwoIndicesOnly() {
        assertEquals(Optional.empty(), IndexErrorMap.of(MadeUpDevice.fit(readings(1e-6, 1), FitOptions.USUAL), 0));
        PitchFit fit = MadeUpDevice.fit(new MadeUpDevice(1, 1e-6, 0)
                .run(MeasuringPlan.of(MadeUpDevice.AXIS, MadeUpDevice.HOME, 2, 2)), FitOptions.USUAL);
        assertEquals(Optional.empty(), IndexErrorMap.of(fit, 0));
    }
}
