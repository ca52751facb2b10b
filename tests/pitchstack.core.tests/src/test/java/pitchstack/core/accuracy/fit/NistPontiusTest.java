// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;

/** NIST Statistical Reference Datasets, Pontius: a parabola, 40 observations, the calibration of a load cell. */
class NistPontiusTest {
    private static final double[] Y = {.11019, .21956, .32949, .43899, .54803, .65694, .76562, .87487, .98292, 1.09146,
        1.20001, 1.30822, 1.41599, 1.52399, 1.63194, 1.73947, 1.84646, 1.95392, 2.06128, 2.16844, .11052, .22018, .32939,
        .43886, .54798, .65739, .76596, .87474, .98300, 1.09150, 1.20004, 1.30818, 1.41613, 1.52408, 1.63159, 1.73965,
        1.84696, 1.95445, 2.06177, 2.16829};
    private static final int LOADS = 20;
    private static final double STEP = 150_000;

    private static double load(int observation) {
        return STEP * (observation % LOADS + 1);
    }

    private static LinearFit fit() {
        double[][] design = new double[Y.length][];
        for (int i = 0; i < Y.length; i++) {
            design[i] = new double[] {1, load(i), load(i) * load(i)};
        }
        double[] weights = new double[Y.length];
        Arrays.fill(weights, 1);
        return new LeastSquares(design, weights).fit(Y);
    }

    @Test
    void fitsTheCertifiedParabola() {
        double[] certified = {0.673565789473684e-3, 0.732059160401003e-6, -0.316081871345029e-14};
        for (int i = 0; i < certified.length; i++) {
            assertEquals(certified[i], fit().coefficients()[i], 1e-10 * Math.abs(certified[i]));
        }
    }

    @Test
    void givesTheCertifiedStandardDeviations() {
        double[] certified = {0.107938612033077e-3, 0.157817399981659e-9, 0.486652849992036e-16};
        for (int i = 0; i < certified.length; i++) {
            assertEquals(certified[i], fit().estimatedUncertainty(i), 1e-10 * certified[i]);
        }
        assertEquals(0.205177424076185e-3, fit().residualDeviation(), 1e-13);
        assertEquals(0.155761768796992e-5, fit().chiSquare(), 1e-15);
    }

    @Test
    void givesTheCertifiedCoefficientOfDetermination() {
        double mean = Arrays.stream(Y).average().orElseThrow();
        double total = Arrays.stream(Y).map(y -> (y - mean) * (y - mean)).sum();
        assertEquals(0.999999900178537, 1 - fit().chiSquare() / total, 1e-14);
    }

    @Test
    void leveragesAreTheDiagonalOfTheHatMatrixOfHipparchus() {
        double[][] x = new double[Y.length][];
        for (int i = 0; i < Y.length; i++) {
            x[i] = new double[] {load(i) / STEP, Math.pow(load(i) / STEP, 2)};
        }
        OLSMultipleLinearRegression regression = new OLSMultipleLinearRegression();
        regression.newSampleData(Y, x);
        for (int i = 0; i < Y.length; i++) {
            assertEquals(regression.calculateHat().getEntry(i, i), fit().leverages()[i], 1e-10);
        }
    }
}
