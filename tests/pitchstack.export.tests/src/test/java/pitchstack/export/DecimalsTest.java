// SPDX-License-Identifier: EPL-2.0
package pitchstack.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DecimalsTest {
    @ParameterizedTest
    @CsvSource({"0,3,0", "1,0,1", "-1.5,1,-1.5", "0.0004,3,0", "-0.0004,3,0", "12.3456,2,12.35", "1000,6,1000",
        "0.000000001,9,0.000000001", "-99.9996,3,-100", "0.05,2,0.05"})
    void writesTheShortestDecimal(double value, int places, String text) {
        assertEquals(text, Decimals.of(value, places));
    }

    @Test
    void agreesWithBigDecimalToTheLastPlace() {
        Random random = new Random(20260115);
        for (int i = 0; i < 20_000; i++) {
            double value = (random.nextDouble() - 0.5) * 2000;
            BigDecimal rounded = new BigDecimal(value).setScale(7, RoundingMode.HALF_UP);
            assertEquals(0, rounded.compareTo(new BigDecimal(Decimals.of(value, 7))), () -> "seed 20260115: " + value);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, 1e16})
    void refusesWhatIsNoLength(double value) {
        assertThrows(IllegalArgumentException.class, () -> Decimals.of(value, 3));
    }
}
