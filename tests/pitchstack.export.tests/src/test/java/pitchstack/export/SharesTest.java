// SPDX-License-Identifier: EPL-2.0
package pitchstack.export;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SharesTest {
    @ParameterizedTest
    @CsvSource({"0, 0, 0 %", "0, 7, 0 %", "7, 7, 100 %", "1, 3, 33.33 %", "1, 1000000, less than 0.01 %",
        "999999, 1000000, more than 99.99 %"})
    void neverRoundToNothingOrEverything(long part, long whole, String share) {
        assertEquals(share, Shares.of(part, whole));
    }
}
