// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import pitchstack.core.stack.Direction;
import pitchstack.core.stack.Setting;

/**
 * Made-up devices whose settings stand off by 5 µm each, the same at every visit, as teeth make it, and by 2 µm otherwise from
 * time to time. Each setting is read three times from either side. Repeats then say little of the pitches: taken for
 * independent readings they promise far too much. Seeds are 0 to 999; by chance alone 950 ± 7 intervals would hold.
 */
class SettingErrorsTest {
    private static final int RUNS = 1000;
    private static final double SEAT_M = 2e-6;
    private static final double SETTING_M = 5e-6;
    private static final List<MeasuringPlan.Line> PLAN = MeasuringPlan.of(MadeUpDevice.AXIS, MadeUpDevice.HOME, 5, 3).stream()
            .filter(line -> !line.setting().equals(MadeUpDevice.HOME)).toList();
    private static final FitOptions BETWEEN = new FitOptions(FitOptions.Scatter.BETWEEN_SETTINGS, 0);

    private interface Fitted {
        Estimate of(PitchFit fit);
    }

    private static int held(FitOptions options, double settingM, ToDoubleFunction<MadeUpDevice> truth, Fitted fitted) {
        int held = 0;
        for (long seed = 0; seed < RUNS; seed++) {
            MadeUpDevice device = new MadeUpDevice(seed, SEAT_M, 0).withSettingErrors(settingM);
            Estimate estimate = fitted.of(MadeUpDevice.fit(device.run(PLAN), options));
            held += Math.abs(estimate.value() - truth.applyAsDouble(device)) <= estimate.within() ? 1 : 0;
        }
        return held;
    }

    private static void assertHolds(int held) {
        assertTrue(0.93 * RUNS <= held && held <= 0.97 * RUNS, held + " of " + RUNS + " intervals hold the truth");
    }

    @Test
    void intervalsHoldTheTruePitchesOfThousandDevices() {
        assertHolds(held(BETWEEN, SETTING_M, device -> device.corrections[0], fit -> fit.correction(0)));
        assertHolds(held(BETWEEN, SETTING_M, device -> device.corrections[1], fit -> fit.correction(1)));
        assertHolds(held(BETWEEN, SETTING_M, device -> device.corrections[2], fit -> fit.correction(2)));
    }

    @Test
    void intervalsHoldDatumAndReversal() {
        assertHolds(held(BETWEEN, SETTING_M, device -> device.datumM, PitchFit::datumM));
        assertHolds(held(BETWEEN, SETTING_M, device -> device.reversalM, fit -> fit.reversalM().orElseThrow()));
    }

    @Test
    void intervalsHoldWhereSettingsHaveNoErrorOfTheirOwn() {
        assertHolds(held(BETWEEN, 0, device -> device.corrections[1], fit -> fit.correction(1)));
    }

    /** Variance of a mean of six: 25 + 4/6, taken for (25 + 4)/6: intervals are 0.43 of what they should be, 60 % hold. */
    @Test
    void takenForIndependentReadingsRepeatsWouldPromiseTooMuch() {
        int held = held(FitOptions.USUAL, SETTING_M, device -> device.corrections[1], fit -> fit.correction(1));
        assertTrue(held < 0.75 * RUNS, held + " of " + RUNS);
    }

    /** Two settings, each read twice, off the line by what adds up: by hand from the definitions. */
    @Test
    void takesTheSumOfSquaresApart() {
        List<Residual> residuals = List.of(residual(0, 3), residual(0, 1), residual(1, -2), residual(1, -4), residual(2, 1),
                residual(2, 1));
        SettingScatter scatter = SettingScatter.of(residuals, 2, 4);
        // Means 2, −3, 1: 2·(4 + 9 + 1) = 28 over 3 − 2; about them 1 + 1 + 1 + 1 + 0 + 0 = 4 over 4 − 1.
        assertEquals(28, scatter.between(), 1e-12);
        assertEquals(1, scatter.betweenFreedom());
        assertEquals(4.0 / 3, scatter.within(), 1e-12);
        assertEquals(3, scatter.withinFreedom());
    }

    private static Residual residual(int index, double off) {
        return new Residual(new Reading(Setting.of(index), 0, Direction.UNKNOWN, 1, 20), off, 0, 0, false);
    }

    @Test
    void fallsBackWhereNoSettingIsToSpare() {
        List<MeasuringPlan.Line> plan = MeasuringPlan.of(MadeUpDevice.AXIS, MadeUpDevice.HOME, 2, 3);
        MadeUpDevice device = new MadeUpDevice(1, SEAT_M, 0);
        List<Reading> readings = device.run(plan);
        List<Reading> few = readings.stream().filter(r -> r.setting().index(0) >= 0 && r.setting().index(1) >= 0
                && r.setting().index(2) >= 0).toList();
        PitchFit fit = MadeUpDevice.fit(few, BETWEEN);
        assertFalse(fit.isBetweenSettings());
        assertEquals(fit.freedom(), fit.correction(0).degreesOfFreedom(), 1e-9);
    }
}
