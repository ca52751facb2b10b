// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import pitchstack.core.accuracy.budget.Budget;
import pitchstack.core.accuracy.budget.BudgetResult;
import pitchstack.core.accuracy.budget.Contribution;
import pitchstack.core.accuracy.budget.Correlation;

/** JCGM 100:2008, example H.3: a thermometer calibrated by a line, and the correction at 30 °C with correlation. */
class GumThermometerH3Test {
    private static final double[] TEMPERATURES = {21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503,
        26.010, 26.511};
    private static final double[] CORRECTIONS = {-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159,
        -0.161, -0.160};
    private static final double REFERENCE = 20;

    private static LinearFit fit() {
        double[] weights = new double[TEMPERATURES.length];
        Arrays.fill(weights, 1);
        return new LeastSquares(Arrays.stream(TEMPERATURES).mapToObj(t -> new double[] {1, t - REFERENCE})
                .toArray(double[][]::new), weights).fit(CORRECTIONS);
    }

    @Test
    void fitsInterceptAndSlopeWithTheirUncertainties() {
        assertEquals(-0.1712, fit().coefficients()[0], 5e-5);
        assertEquals(0.0029, fit().estimatedUncertainty(0), 5e-5);
        assertEquals(0.00218, fit().coefficients()[1], 5e-6);
        assertEquals(0.00067, fit().estimatedUncertainty(1), 5e-6);
        assertEquals(-0.930, fit().correlation(0, 1), 5e-4);
        assertEquals(0.0035, fit().residualDeviation(), 5e-5);
    }

    @Test
    void predictsTheCorrectionAt30DegreesWithNineDegreesOfFreedom() {
        double step = 30 - REFERENCE;
        LinearFit fit = fit();
        BudgetResult result = new Budget(List.of(
                Contribution.observed("intercept", fit.estimatedUncertainty(0), fit.freedom()),
                Contribution.observed("slope", fit.estimatedUncertainty(1), fit.freedom()).times(step)),
                List.of(new Correlation(0, 1, fit.correlation(0, 1)))).result();
        assertEquals(-0.1494, fit.coefficients()[0] + step * fit.coefficients()[1], 5e-5);
        assertEquals(0.0041, result.combined(), 5e-5);
        assertEquals(9, result.degreesOfFreedom(), 1e-9);
    }
}
