// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.teeth;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lewis factors of racks against tables (0.484 at 20°, 0.390 at 14.5°), and against a search for the worst section. */
class LewisTest {
    @ParameterizedTest
    @CsvSource({"14.5,0.38759", "20,0.46322", "25,0.48306"})
    void givesTheClosedForm(double degrees, double factor) {
        assertEquals(factor, Lewis.factor(Math.toRadians(degrees)), 6e-6);
    }

    @Test
    void tablesForRacksAreAFewPercentHigher() {
        assertEquals(0.484, Lewis.TABLE_RACK_20, 5e-4);
        assertEquals(0.484, Lewis.factor(Math.toRadians(20)), 0.05 * 0.484);
        assertEquals(0.390, Lewis.factor(Math.toRadians(14.5)), 0.05 * 0.390);
    }

    /** The force acts along the normal of the flank at the corner of the tip and meets the middle a·tan α below it. */
    @ParameterizedTest
    @CsvSource({"14.5", "20", "25", "30"})
    void isTheWorstSectionOfAll(double degrees) {
        double tan = Math.tan(Math.toRadians(degrees));
        double halfTip = Math.PI / 4 - tan;
        double worst = 0;
        double where = 0;
        for (double y = halfTip * tan; y < 10; y += 1e-5) {
            double thickness = 2 * (halfTip + y * tan);
            double stress = 6 * (y - halfTip * tan) / (thickness * thickness);
            if (stress > worst) {
                worst = stress;
                where = y;
            }
        }
        assertEquals(1 / worst, Lewis.factor(Math.toRadians(degrees)), 1e-8);
        assertEquals(where, Lewis.criticalDepth(Math.toRadians(degrees)), 0.01);
    }

    /** 200 N on one tooth of module 1, 10 mm wide: 43.18 MPa in the closed form, 41.24 MPa with Y = 0.485 of textbooks. */
    @Test
    void givesTheStressOfOneTooth() {
        assertEquals(43.18e6, Lewis.stressPa(200, 10e-3, 1e-3, Lewis.factor(Math.toRadians(20))), 1e4);
        assertEquals(41.24e6, Lewis.stressPa(200, 10e-3, 1e-3, 0.485), 1e4);
        assertEquals(1.4646, Lewis.criticalDepth(Math.toRadians(20)), 5e-5);
    }
}
