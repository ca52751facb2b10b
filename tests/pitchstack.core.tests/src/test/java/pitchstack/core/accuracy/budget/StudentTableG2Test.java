// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.budget;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** JCGM 100:2008, table G.2: quantiles of Student's distribution, printed to two decimals. */
class StudentTableG2Test {
    @ParameterizedTest
    @CsvSource({"1,12.71,63.66", "2,4.30,9.92", "5,2.57,4.03", "10,2.23,3.17", "16,2.12,2.92", "50,2.01,2.68",
        "Infinity,1.96,2.576"})
    void givesTheTabulatedFactors(double freedom, double at95, double at99) {
        assertEquals(at95, Coverage.factor(0.95, freedom), 0.0051);
        assertEquals(at99, Coverage.factor(0.99, freedom), 0.0051);
    }
}
