// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.stat.regression.GLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;
import pitchstack.core.stack.Direction;
import pitchstack.core.stack.Setting;

/** Fits of made-up devices of known truth. */
class PitchFitTest {
    private static final List<MeasuringPlan.Line> PLAN = MeasuringPlan.of(MadeUpDevice.AXIS, MadeUpDevice.HOME, 5, 2);

    private static Reading shifted(Reading r, double byM) {
        return new Reading(r.setting(), r.positionM() + byM, r.direction(), r.uncertaintyM(), r.temperatureC());
    }

    @Test
    void findsTheTruthExactlyWhereNothingScatters() {
        MadeUpDevice device = new MadeUpDevice(1, 0, 0);
        List<Reading> readings = new ArrayList<>();
        double temperature = 12;
        for (MeasuringPlan.Line line : PLAN) {
            readings.add(device.read(line.setting(), line.direction(), temperature, 1e-6));
            temperature += 0.25;
        }
        PitchFit fit = MadeUpDevice.fit(readings, FitOptions.USUAL);
        for (int j = 0; j < 3; j++) {
            assertEquals(device.corrections[j], fit.correction(j).value(), 1e-12);
        }
        assertEquals(device.datumM, fit.datumM().value(), 1e-14);
        assertEquals(device.reversalM, fit.reversalM().orElseThrow().value(), 1e-14);
        assertEquals(PLAN.size() - 5, fit.freedom());
    }

    /** General least squares of Hipparchus with the covariance of the readings: the textbook formula. */
    @Test
    void agreesWithHipparchusOnWeightedReadings() {
        MadeUpDevice device = new MadeUpDevice(2, 5e-6, 0);
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < PLAN.size(); i++) {
            readings.add(device.read(PLAN.get(i).setting(), PLAN.get(i).direction(), 20, (1 + i % 4) * 1e-6));
        }
        Design design = Design.of(MadeUpDevice.STAGES, readings);
        double[][] x = readings.stream().map(design::row).toArray(double[][]::new);
        // Hipparchus puts the column of ones in front by itself.
        double[][] withoutOnes = MatrixUtils.createRealMatrix(x).getSubMatrix(0, x.length - 1, 1, x[0].length - 1).getData();
        // In square micrometres, or its inversion takes the matrix for singular.
        RealMatrix covariance = MatrixUtils.createRealDiagonalMatrix(
                readings.stream().mapToDouble(r -> r.uncertaintyM() * r.uncertaintyM() * 1e12).toArray());
        GLSMultipleLinearRegression other = new GLSMultipleLinearRegression();
        other.newSampleData(readings.stream().mapToDouble(design::deviationM).toArray(), withoutOnes, covariance.getData());

        PitchFit fit = MadeUpDevice.fit(readings, new FitOptions(FitOptions.Scatter.AS_STATED, 0));
        double[] expected = other.estimateRegressionParameters();
        double[][] variance = MatrixUtils.inverse(MatrixUtils.createRealMatrix(x).transposeMultiply(
                MatrixUtils.inverse(covariance)).multiply(MatrixUtils.createRealMatrix(x))).getData();
        for (int j = 0; j < 3; j++) {
            assertEquals(expected[1 + j], fit.correction(j).value(), 1e-10);
            assertEquals(Math.sqrt(variance[1 + j][1 + j]) * 1e-6, fit.correction(j).uncertainty(), 1e-12);
        }
        assertEquals(variance[1][2] / Math.sqrt(variance[1][1] * variance[2][2]), fit.correlation(0, 1), 1e-8);
    }

    @Test
    void sharesTheScaleOfTheInstrumentAmongAllStages() {
        List<Reading> readings = new MadeUpDevice(3, 1e-9, 0).run(PLAN);
        double scale = 50e-6;
        PitchFit fit = MadeUpDevice.fit(readings, new FitOptions(FitOptions.Scatter.FROM_RESIDUALS, scale));
        assertEquals(scale, fit.correction(1).uncertainty(), 1e-4 * scale);
        assertEquals(1, fit.correlation(1, 2), 1e-4);
        assertEquals(scale * scale, fit.covariances()[0][2], 1e-4 * scale * scale);
        assertEquals(1.96, Math.round(100 * fit.correction(1).within() / scale) / 100.0);
    }

    @Test
    void showsAMiscountedToothAsAnOutlierAndNothingElse() {
        List<Reading> readings = new ArrayList<>(new MadeUpDevice(4, 5e-6, 0).run(PLAN));
        readings.set(17, shifted(readings.get(17), 2.54e-3));
        List<Residual> outliers = MadeUpDevice.fit(readings, FitOptions.USUAL).outliers();
        assertEquals(1, outliers.size());
        assertEquals(readings.get(17), outliers.get(0).reading());
    }

    /** With a fit without the reading, the studentized residual is the t of its prediction. */
    @Test
    void studentizesAgainstAFitWithoutTheReading() {
        List<Reading> readings = new MadeUpDevice(5, 5e-6, 0).run(PLAN);
        List<Reading> others = new ArrayList<>(readings);
        Reading out = others.remove(7);
        Design design = Design.of(MadeUpDevice.STAGES, others);
        LinearFit fit = design.problem(others).fit(others.stream().mapToDouble(design::deviationM).toArray());
        double[] row = design.row(out);
        double predicted = 0;
        double spread = 0;
        for (int i = 0; i < row.length; i++) {
            predicted += row[i] * fit.coefficients()[i];
            for (int j = 0; j < row.length; j++) {
                spread += row[i] * fit.inverse().getEntry(i, j) * row[j];
            }
        }
        double t = (design.deviationM(out) - predicted)
                / (fit.residualDeviation() * Math.sqrt(out.uncertaintyM() * out.uncertaintyM() + spread));
        assertEquals(t, MadeUpDevice.fit(readings, FitOptions.USUAL).residuals().get(7).studentized(), 1e-7);
    }

    @Test
    void leveragesAddUpToTheNumberOfFittedNumbers() {
        PitchFit fit = MadeUpDevice.fit(new MadeUpDevice(6, 5e-6, 0).run(PLAN), FitOptions.USUAL);
        assertEquals(5, fit.residuals().stream().mapToDouble(Residual::leverage).sum(), 1e-10);
    }

    @Test
    void saysHowLikelyTheScatterIsIfTheReadingsAreAsGoodAsStated() {
        // Stated 1 µm, true 5 µm: five times too large, which chance never is; then stated 5 µm.
        PitchFit wrong = MadeUpDevice.fit(new MadeUpDevice(7, 5e-6, 0).run(PLAN), FitOptions.USUAL);
        assertEquals(5, wrong.scatterRatio(), 1);
        assertTrue(wrong.chance() < 1e-6);
        MadeUpDevice device = new MadeUpDevice(7, 5e-6, 0);
        List<Reading> right = PLAN.stream().map(p -> device.read(p.setting(), p.direction(), 20, 5e-6)).toList();
        assertTrue(MadeUpDevice.fit(right, FitOptions.USUAL).chance() > 0.01);
    }

    @Test
    void refusesARunWithoutAReadingToSpare() {
        MadeUpDevice device = new MadeUpDevice(8, 5e-6, 0);
        List<Reading> four = new ArrayList<>();
        for (int[] indices : new int[][] {{0, 0, 0}, {100, 0, 0}, {0, 10, 0}, {0, 0, 10}}) {
            four.add(device.read(Setting.of(indices), Direction.FORWARD, 20, 1e-6));
        }
        assertEquals(new FitOutcome.TooFew(4, 5), PitchFit.of(MadeUpDevice.STAGES, four, FitOptions.USUAL));
        four.add(device.read(Setting.of(50, 0, 0), Direction.FORWARD, 20, 1e-6));
        PitchFit fit = MadeUpDevice.fit(four, FitOptions.USUAL);
        assertEquals(1, fit.freedom());
        // One degree of freedom says nothing of single readings, and two of them are needed to the last.
        assertTrue(fit.outliers().isEmpty());
        assertFalse(fit.residuals().get(4).outlier());
        assertTrue(Double.isNaN(fit.residuals().get(2).studentized()));
    }

    @Test
    void refusesReadingsThatCannotBe() {
        assertThrows(IllegalArgumentException.class, () -> new Reading(Setting.of(0), 0, Direction.UNKNOWN, 0, 20));
        assertThrows(IllegalArgumentException.class, () -> new Reading(Setting.of(0), Double.NaN, Direction.UNKNOWN, 1, 20));
        assertThrows(IllegalArgumentException.class, () -> new StageScale("x", 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new FitOptions(FitOptions.Scatter.AS_STATED, -1));
    }
}
