// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A thousand made-up devices of known truth, each measured and fitted: intervals of 95 % hold the truth in 93 to 97 % of
 * the runs, and the estimates are off to neither side. Seeds are 0 to 999. By chance alone 950 ± 7 would hold.
 */
class SimulatedDeviceTest {
    private static final int RUNS = 1000;
    private static final double SCATTER_M = 5e-6;
    private static final List<MeasuringPlan.Line> PLAN = MeasuringPlan.of(MadeUpDevice.AXIS, MadeUpDevice.HOME, 3, 1);

    private interface Truth {
        double of(MadeUpDevice device);
    }

    private interface Fitted {
        Estimate of(PitchFit fit);
    }

    private static void assertHolds(FitOptions options, double instrument, Truth truth, Fitted fitted) {
        int held = 0;
        double standardized = 0;
        for (long seed = 0; seed < RUNS; seed++) {
            MadeUpDevice device = new MadeUpDevice(seed, SCATTER_M, instrument);
            Estimate estimate = fitted.of(MadeUpDevice.fit(device.run(PLAN), options));
            double error = estimate.value() - truth.of(device);
            held += Math.abs(error) <= estimate.within() ? 1 : 0;
            standardized += error / estimate.uncertainty() / RUNS;
        }
        assertTrue(0.93 * RUNS <= held && held <= 0.97 * RUNS, held + " of " + RUNS + " intervals hold the truth");
        // The mean of a thousand standardized errors has a standard deviation of 0.03 to 0.04.
        assertEquals(0, standardized, 0.13, "mean standardized error");
    }

    @Test
    void intervalsHoldTheTruePitchOfTheRack() {
        assertHolds(FitOptions.USUAL, 0, device -> device.corrections[0], fit -> fit.correction(0));
    }

    @Test
    void intervalsHoldTheTruePitchOfTheLowerStage() {
        assertHolds(FitOptions.USUAL, 0, device -> device.corrections[1], fit -> fit.correction(1));
    }

    @Test
    void intervalsHoldTheTruePitchOfTheUpperStage() {
        assertHolds(FitOptions.USUAL, 0, device -> device.corrections[2], fit -> fit.correction(2));
    }

    @Test
    void intervalsHoldDatumAndReversal() {
        assertHolds(FitOptions.USUAL, 0, device -> device.datumM, PitchFit::datumM);
        assertHolds(FitOptions.USUAL, 0, device -> device.reversalM, fit -> fit.reversalM().orElseThrow());
    }

    /** The instrument is off by parts in 10 000, another one each time, and the scatter comes from the residuals. */
    @Test
    void intervalsHoldWithAnInstrumentWhoseScaleIsOff() {
        double scale = 100e-6;
        FitOptions options = new FitOptions(FitOptions.Scatter.FROM_RESIDUALS, scale);
        assertHolds(options, scale, device -> device.corrections[0], fit -> fit.correction(0));
        assertHolds(options, scale, device -> device.corrections[1], fit -> fit.correction(1));
    }

    /** The bias over all devices is far below what one run can tell. */
    @Test
    void theMeanErrorOfThousandRunsIsNearNothing() {
        double mean = 0;
        double uncertainty = 0;
        for (long seed = 0; seed < RUNS; seed++) {
            MadeUpDevice device = new MadeUpDevice(seed, SCATTER_M, 0);
            Estimate estimate = MadeUpDevice.fit(device.run(PLAN), FitOptions.USUAL).correction(1);
            mean += (estimate.value() - device.corrections[1]) / RUNS;
            uncertainty += estimate.uncertainty() / RUNS;
        }
        assertEquals(0, mean, 4 * uncertainty / Math.sqrt(RUNS));
    }

    /** Without any slip, one run in twenty shows an outlier by chance. */
    @Test
    void raisesAFalseAlarmInOneRunOfTwenty() {
        int alarms = 0;
        for (long seed = 0; seed < RUNS; seed++) {
            PitchFit fit = MadeUpDevice.fit(new MadeUpDevice(seed, SCATTER_M, 0).run(PLAN), FitOptions.USUAL);
            alarms += fit.outliers().isEmpty() ? 0 : 1;
        }
        assertTrue(30 <= alarms && alarms <= 70, alarms + " runs of " + RUNS + " have an outlier");
    }
}
