// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.rack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** ISO 1328-1, both editions, against values worked out from the published formulas apart from this program. */
class Iso1328Test {
    /** Edition, grade, diameter and module in mm, rounded and unrounded single and total deviation in µm. */
    @ParameterizedTest
    @CsvSource({"ISO_2013,5,50,1,5.5,5.4500,17,16.6891", "ISO_2013,5,100,2,6.0,5.9000,19,19.1000",
        "ISO_2013,6,95.4930,1,8.0,7.7718,26,25.8315", "ISO_2013,6,318.3099,2,8.5,8.6526,34,33.7280",
        "ISO_2013,8,95.4930,1,16,15.5436,52,51.6630", "ISO_2013,8,318.3099,1,16,16.1738,65,65.4761",
        "ISO_2013,10,318.3099,2,35,34.6104,135,134.9120", "ISO_2013,11,318.3099,1,46,45.7465,185,185.1944",
        "ISO_1995,5,50,1,5.0,4.975,14,14.329", "ISO_1995,6,100,2,7.5,7.590,26,26.042",
        "ISO_1995,8,318.31,1,19,18.916,91,91.002"})
    void givesTheTolerances(RackEdition edition, int grade, double d, double m, double pitch, double pitchExact,
            double total, double totalExact) {
        double steps = Math.pow(2, (grade - 5) / 2.0);
        assertEquals(pitchExact, edition.pitchUm(d, m) * steps, 6e-4);
        assertEquals(totalExact, edition.totalUm(d, m) * steps, 6e-4);
        // The unrounded 4.975 of grade 5 is below 5 and rounds to tenths, 5.0.
        RackTolerance tolerance = RackTolerance.of(edition, grade, d * Math.PI / 1000 * (1 - 1e-9), m / 1000).orElseThrow();
        assertEquals(pitch * 1e-6, tolerance.pitchM(), 1e-12);
        assertEquals(total * 1e-6, tolerance.totalM(), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"ISO_2013,0,1,1", "ISO_2013,12,1,1", "ISO_2013,6,0.01,1", "ISO_2013,6,1,0.4", "ISO_1995,13,1,1",
        "ISO_1995,6,40,1"})
    void isNotStretchedBeyondItsScope(RackEdition edition, int grade, double lengthM, double moduleMm) {
        assertTrue(RackTolerance.of(edition, grade, lengthM, moduleMm / 1000).isEmpty());
    }

    /** f = 8 µm, F = 26 µm: over one tooth 8/√3, over many 26/√6. */
    @Test
    void believesLessOverFewTeethThanOverMany() {
        RackTolerance grade6 = new RackTolerance(8e-6, 26e-6);
        assertEquals(0, grade6.believedM(0));
        assertEquals(8e-6 / Math.sqrt(3), grade6.believedM(1), 1e-15);
        assertEquals(26e-6 / Math.sqrt(6), grade6.believedM(50), 1e-15);
    }
}
