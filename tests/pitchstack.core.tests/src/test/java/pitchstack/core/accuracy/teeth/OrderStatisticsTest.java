// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.teeth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The highest of N Gaussian numbers against closed forms and against figures integrated apart from this program. */
class OrderStatisticsTest {
    @Test
    void agreesWithTheClosedFormsForUpToFour() {
        assertEquals(0, OrderStatistics.meanOfHighest(1), 1e-14);
        assertEquals(1, OrderStatistics.deviationOfHighest(1), 1e-12);
        assertEquals(1 / Math.sqrt(Math.PI), OrderStatistics.meanOfHighest(2), 1e-12);
        assertEquals(Math.sqrt(1 - 1 / Math.PI), OrderStatistics.deviationOfHighest(2), 1e-12);
        assertEquals(1.5 / Math.sqrt(Math.PI), OrderStatistics.meanOfHighest(3), 1e-12);
        assertEquals(3 * Math.acos(-1.0 / 3) / Math.pow(Math.PI, 1.5), OrderStatistics.meanOfHighest(4), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"5,1.162964,0.668980", "8,1.423600,0.610653", "10,1.538753,0.586808", "16,1.765991,0.543148",
        "20,1.867475,0.525068", "50,2.249074,0.464449", "100,2.507594,0.429424"})
    void agreesWithTabulatedMeansAndDeviations(int count, double mean, double deviation) {
        assertEquals(mean, OrderStatistics.meanOfHighest(count), 6e-7);
        assertEquals(deviation, OrderStatistics.deviationOfHighest(count), 6e-7);
    }

    @Test
    void refusesTheHighestOfNone() {
        assertThrows(IllegalArgumentException.class, () -> OrderStatistics.meanOfHighest(0));
    }
}
