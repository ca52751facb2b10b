// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import org.hipparchus.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;

/** NIST Statistical Reference Datasets, Norris: a line, 36 observations, ozone monitors; certified values. */
class NistNorrisTest {
    /** Rows of y, x. */
    private static final double[][] DATA = {{0.1, 0.2}, {338.8, 337.4}, {118.1, 118.2}, {888.0, 884.6}, {9.2, 10.1},
        {228.1, 226.5}, {668.5, 666.3}, {998.5, 996.3}, {449.1, 448.6}, {778.9, 777.0}, {559.2, 558.2}, {0.3, 0.4},
        {0.1, 0.6}, {778.1, 775.5}, {668.8, 666.9}, {339.3, 338.0}, {448.9, 447.5}, {10.8, 11.6}, {557.7, 556.0},
        {228.3, 228.1}, {998.0, 995.8}, {888.8, 887.6}, {119.6, 120.2}, {0.3, 0.3}, {0.6, 0.3}, {557.6, 556.8},
        {339.3, 339.1}, {888.0, 887.2}, {998.5, 999.0}, {778.9, 779.0}, {10.2, 11.1}, {117.6, 118.3}, {228.9, 229.2},
        {668.4, 669.1}, {449.2, 448.9}, {0.2, 0.5}};

    private static LinearFit fit() {
        double[] weights = new double[DATA.length];
        Arrays.fill(weights, 1);
        return new LeastSquares(Arrays.stream(DATA).map(row -> new double[] {1, row[1]}).toArray(double[][]::new), weights)
                .fit(Arrays.stream(DATA).mapToDouble(row -> row[0]).toArray());
    }

    private static void assertCertified(double certified, double computed) {
        assertEquals(certified, computed, 1e-11 * Math.abs(certified));
    }

    @Test
    void fitsTheCertifiedLine() {
        assertCertified(-0.262323073774029, fit().coefficients()[0]);
        assertCertified(1.00211681802045, fit().coefficients()[1]);
    }

    @Test
    void givesTheCertifiedStandardDeviations() {
        assertCertified(0.232818234301152, fit().estimatedUncertainty(0));
        assertCertified(0.429796848199937e-3, fit().estimatedUncertainty(1));
        assertCertified(0.884796396144373, fit().residualDeviation());
        assertEquals(34, fit().freedom());
    }

    @Test
    void givesTheCertifiedCoefficientOfDetermination() {
        double mean = Arrays.stream(DATA).mapToDouble(row -> row[0]).average().orElseThrow();
        double total = Arrays.stream(DATA).mapToDouble(row -> (row[0] - mean) * (row[0] - mean)).sum();
        assertCertified(0.999993745883712, 1 - fit().chiSquare() / total);
    }

    @Test
    void agreesWithHipparchusAsSecondOpinion() {
        SimpleRegression regression = new SimpleRegression();
        Arrays.stream(DATA).forEach(row -> regression.addData(row[1], row[0]));
        assertEquals(regression.getSlope(), fit().coefficients()[1], 1e-13);
        assertEquals(regression.getSlopeStdErr(), fit().estimatedUncertainty(1), 1e-13);
        assertEquals(regression.getInterceptStdErr(), fit().estimatedUncertainty(0), 1e-11);
    }
}
