// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import pitchstack.core.accuracy.evaluation.TwoWayFigures;
import pitchstack.core.accuracy.fit.PitchFit;
import pitchstack.core.stack.Setting;
import pitchstack.model.Approach;
import pitchstack.model.AxisKind;
import pitchstack.model.MeasurementRun;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Positioner;
import pitchstack.model.Reading;
import pitchstack.model.Stage;
import pitchstack.model.StageSource;

/** Runs of a file: read, fitted, evaluated, and their corrections written back. */
class RunsOfAFileTest {
    private static final double PPM = 1e-6;
    private static final double UM = 1e-6;

    /** A device of truth +40 and −600 ppm, read at three places a stage from both sides, two times, with 1 µm of scatter. */
    private static Positioner measured(long seed) {
        Positioner positioner = Devices.of(Devices.rack(), Devices.printed());
        MeasurementRun run = Devices.run(positioner, "first");
        Random random = new Random(seed);
        int[][] settings = {{0, 0}, {60, 0}, {120, 0}, {180, 0}, {0, -20}, {0, -10}, {0, 10}, {0, 20}};
        for (int repeat = 0; repeat < 2; repeat++) {
            for (int[] at : settings) {
                for (Approach side : List.of(Approach.UP, Approach.DOWN)) {
                    double mm = at[0] * 5 * (1 + 40 * PPM) + at[1] * 4.9 * (1 - 600 * PPM) + 1e-3 * random.nextGaussian();
                    Devices.reading(run, side, String.format(Locale.ROOT, "%.5f mm", mm), at[0], at[1]);
                }
            }
        }
        return positioner;
    }

    private static AxisFit fit(Positioner positioner) {
        return AxisFit.of(Devices.read(positioner, Devices.axis(positioner).getRuns().get(0)), Setting.of(0, 0));
    }

    @Test
    void findsTheTruthAndWritesItIntoTheFile() {
        Positioner positioner = measured(7);
        AxisFit fit = fit(positioner);
        PitchFit found = fit.fit().orElseThrow();
        assertEquals(40 * PPM, found.correction(0).value(), 4 * found.correction(0).uncertainty());
        assertEquals(-600 * PPM, found.correction(1).value(), 4 * found.correction(1).uncertainty());
        Corrections.apply(Devices.axis(positioner), Devices.axis(positioner).getRuns().get(0), fit, false);
        Stage fine = Devices.axis(positioner).getStages().get(1);
        assertEquals(found.correction(1).value() / PPM, fine.getCorrectionPpm(), 0.0005);
        assertEquals(found.correction(1).uncertainty() / PPM, fine.getCorrectionUncertaintyPpm(), 0.0005);
        assertEquals("first", fine.getCorrectionRun().getId());
    }

    /** The covariance is that of the run: u² = Σ Σ L_j L_k cov_jk over 500 mm of rack and 49 mm of print. */
    @Test
    void theBudgetTakesTheCovarianceOfTheRun() {
        Positioner positioner = measured(8);
        AxisFit fit = fit(positioner);
        Corrections.apply(Devices.axis(positioner), Devices.axis(positioner).getRuns().get(0), fit, false);
        AccuracyReading reading = Devices.read(positioner);
        double[][] c = fit.fit().orElseThrow().covariances();
        double rack = 0.5 * (1 + fit.fit().get().correction(0).value());
        double print = 0.049 * (1 + fit.fit().get().correction(1).value());
        double expected = rack * rack * c[0][0] + print * print * c[1][1] + 2 * rack * print * c[0][1];
        double found = new AxisBudget(reading).at(Setting.of(100, 10)).lines().stream()
                .filter(line -> line.name().startsWith("Fitted pitch")).mapToDouble(BudgetLine::share).sum()
                * Math.pow(new AxisBudget(reading).at(Setting.of(100, 10)).combinedM(), 2);
        assertEquals(expected, found, 1e-6 * expected);
    }

    @Test
    void saysWhenACorrectionIsNotOfItsRunAnyMore() {
        Positioner positioner = measured(9);
        Corrections.apply(Devices.axis(positioner), Devices.axis(positioner).getRuns().get(0), fit(positioner), false);
        Devices.axis(positioner).getStages().get(1).setCorrectionPpm(-400);
        assertTrue(Devices.read(positioner).assumptions().contains("“Fine”: its correction is not what run “first” gives today;"
                + " what the file states of it is taken. Fit the run again."));
    }

    /** One stage stated by hand, the other as believed: the budget has a fitted line for the first alone. */
    @Test
    void aStageThatWasNotMeasuredStaysAsBelieved() {
        Positioner positioner = Devices.of(Devices.rack(), Devices.printed());
        Devices.axis(positioner).getStages().get(1).setCorrectionPpm(-300);
        Devices.axis(positioner).getStages().get(1).setCorrectionUncertaintyPpm(50);
        List<String> names = new AxisBudget(Devices.read(positioner)).at(Setting.of(100, 10)).lines().stream()
                .map(BudgetLine::name).toList();
        assertTrue(names.contains("Fitted pitch of “Fine”"), names.toString());
        assertTrue(names.contains("Base row of “Rack”, by its grade"), names.toString());
    }

    @Test
    void namesTheStagesThatARunCannotTellAndSettingsThatWould() {
        Positioner positioner = Devices.of(Devices.rack(), Devices.printed());
        MeasurementRun run = Devices.run(positioner, "poor");
        for (int n : new int[] {0, 5, 10, 15, 20}) {
            Devices.reading(run, Approach.UP, 0.1 * n + " mm", n, -n);
        }
        AxisFit fit = fit(positioner);
        assertTrue(fit.whyNot().orElseThrow().startsWith("The run does not tell every stage: “Rack” and “Fine” cannot be told from"
                + " each other, since they moved together. Measure also: “Rack” 180, “Fine” 0"), fit.whyNot().toString());
        for (Setting setting : fit.proposals()) {
            double mm = setting.index(0) * 5 + setting.index(1) * 4.9;
            Devices.reading(run, Approach.UP, mm + " mm", setting.index(0), setting.index(1));
        }
        assertTrue(fit(positioner).fit().isPresent());
    }

    @Test
    void leavesOutWhatItCannotUseAndSaysSo() {
        Positioner positioner = Devices.of(Devices.rack(), Devices.printed());
        MeasurementRun run = Devices.run(positioner, "odd");
        Devices.reading(run, Approach.UP, "5 mm", 1, 0);
        Devices.reading(run, Approach.UP, "", 2, 0);
        Devices.reading(run, Approach.UP, "5 mm", 1);
        Devices.reading(run, Approach.UP, "five", 1, 0);
        RunReading reading = Devices.read(positioner, run);
        assertEquals(List.of(0), reading.places());
        assertEquals(1, reading.open());
        assertEquals(2, reading.unreadable().size());
        assertEquals("Run “odd”, reading 3 has 1 index, but the axis has 2 stages; it is left out.", reading.unreadable().get(0));
    }

    /** A dial shows 10° where the table has turned 370°: the reading is that of 370°. */
    @Test
    void unwrapsTheDialOfARotaryAxis() {
        Stage ring = Devices.stage("Ring", "360 per turn", StageSource.BOUGHT, 720, 0);
        Positioner positioner = Devices.of(ring);
        Devices.axis(positioner).setKind(AxisKind.ROTARY);
        MeasurementRun run = Devices.run(positioner, "turns");
        Devices.reading(run, Approach.UP, "10°", 370);
        assertEquals(Math.toRadians(370), Devices.read(positioner, run).readings().get(0).positionM(), 1e-9);
    }

    /** The hand example: targets 0 and 1 mm, up {1,3},{0,2}, down {−1,1},{4,6} µm. */
    @Test
    void evaluatesSettingsAsTheHandExample() {
        Positioner positioner = Devices.of(Devices.stage("Rack", "1 mm", StageSource.BOUGHT, 60, 20));
        MeasurementRun run = Devices.run(positioner, "hand");
        double[][] offUm = {{1, 3, -1, 1}, {0, 2, 4, 6}};
        for (int index = 0; index < 2; index++) {
            for (int i = 0; i < 4; i++) {
                Devices.reading(run, i < 2 ? Approach.UP : Approach.DOWN,
                        String.format(Locale.ROOT, "%.6f mm", index + offUm[index][i] / 1e3), index);
            }
        }
        RunEvaluation evaluation = RunEvaluation.of(Devices.read(positioner, run));
        TwoWayFigures both = evaluation.positioning().orElseThrow().both().orElseThrow();
        assertEquals(4, both.reversalM() / UM, 1e-6);
        assertEquals(-1, both.meanReversalM() / UM, 1e-6);
        assertEquals(9.6569, both.repeatabilityM() / UM, 1e-4);
        assertEquals(10.6569, both.accuracyM() / UM, 1e-4);
        assertEquals(List.of(Setting.of(0), Setting.of(1)), evaluation.settings());
        assertEquals(List.of("Some position was visited 2 times from a side; ISO 230-2 asks for 5."), evaluation.remarks());
    }

    @Test
    void aReadingMayHaveItsOwnUncertaintyAndTemperature() {
        Positioner positioner = Devices.of(Devices.rack(), Devices.printed());
        MeasurementRun run = Devices.run(positioner, "own");
        run.setTemperatureC(22);
        run.setUncertainty("2 µm");
        Devices.reading(run, Approach.UP, "5 mm", 1, 0);
        Reading second = Devices.reading(run, Approach.UP, "10 mm", 2, 0);
        second.setUncertainty("3 µm");
        second.setTemperatureC(0);
        RunReading reading = Devices.read(positioner, run);
        assertEquals(22, reading.readings().get(0).temperatureC());
        assertEquals(2 * UM, reading.readings().get(0).uncertaintyM(), 1e-15);
        assertEquals(0, reading.readings().get(1).temperatureC());
        assertEquals(3 * UM, reading.readings().get(1).uncertaintyM(), 1e-15);
        assertEquals(PitchstackFactory.eINSTANCE.createReading().isSetTemperatureC(), false);
    }
}
