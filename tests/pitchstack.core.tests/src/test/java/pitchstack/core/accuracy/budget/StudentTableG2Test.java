// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.budget;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** JCGM 100:2008, table G.2: quantiles of Student's distribution, printed to two decimals. */
class StudentTableG2Test {
    @ParameterizedTest
    @CsvSource({"1,12.71,63.66", "2,4.30,9.92", "5,2.57,4.03", "10,2.23,3.17", "16,2.12,2.92", "50,2.01,2.68",
        "Infinity,1.96,2.576"})
    void givesTheTabulatedFactors(double freedom, double at95, double at99) {
        assertEquals(at95, Coverage.factor(0.95, freedom), 0.0051);
        assertEquals(at99, Coverage.factor(0.99, freedom), 0.0051);
    }

    /** Cornish and Fisher: t = z + (z³ + z)/4ν + … */
    @ParameterizedTest
    @ValueSource(doubles = {1e3, 1e5, 1e6, 9.9e6, 1.1e7, 1e9, 1e20})
    void runsIntoTheGaussianFactor(double freedom) {
        double z = 1.959963984540054;
        assertEquals(z + (z * z * z + z) / (4 * freedom), Coverage.factor(0.95, freedom), 3 / (freedom * freedom) + 3e-7);
    }
}
