// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** NIST Statistical Reference Datasets, NoInt1: a line through the origin, 11 observations; certified values. */
class NistNoInt1Test {
    private static final int COUNT = 11;

    private static LinearFit fit() {
        double[][] x = new double[COUNT][];
        double[] y = new double[COUNT];
        double[] weights = new double[COUNT];
        Arrays.fill(weights, 1);
        for (int i = 0; i < COUNT; i++) {
            x[i] = new double[] {60 + i};
            y[i] = 130 + i;
        }
        return new LeastSquares(x, weights).fit(y);
    }

    @Test
    void fitsTheCertifiedLineThroughTheOrigin() {
        assertEquals(2.07438016528926, fit().coefficients()[0], 1e-13);
        assertEquals(0.0165289256198347, fit().estimatedUncertainty(0), 1e-14);
        assertEquals(3.56753034006338, fit().residualDeviation(), 1e-12);
    }

    /** Without an intercept NIST certifies the uncentred one. */
    @Test
    void givesTheCertifiedUncentredCoefficientOfDetermination() {
        double total = 0;
        for (int i = 0; i < COUNT; i++) {
            total += (130 + i) * (130 + i);
        }
        assertEquals(0.999365492298663, 1 - fit().chiSquare() / total, 1e-14);
    }
}
