// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.hipparchus.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;

/** Returns to zero whose figures can be done by hand, by tables, or by somebody else's regression. */
class ZeroReturnsTest {
    @Test
    void givesMeanSpreadAndLargest() {
        ZeroReturns returns = ZeroReturns.of(List.of(1.0, -1.0, 1.0, -1.0, 0.0));
        assertEquals(0, returns.meanM(), 1e-15);
        assertEquals(1, returns.deviationM(), 1e-15);
        assertEquals(1, returns.largestM());
        // t of 95 % with 4 degrees of freedom is 2.776 (JCGM 100:2008, table G.2: 2.78).
        assertEquals(2.776 * Math.sqrt(1.2), returns.nextWithinM(), 1e-3);
        // χ² of 5 % with 4 degrees of freedom is 0.7107.
        assertEquals(Math.sqrt(4 / 0.7107), returns.deviationBelowM(), 1e-3);
    }

    @Test
    void seesADriftThatChanceDoesNotExplain() {
        assertTrue(ZeroReturns.of(List.of(0.0, 1.1, 1.9, 3.0, 4.1)).drifts());
        assertFalse(ZeroReturns.of(List.of(0.0, 1.1, -0.9, 1.0, 0.1)).drifts());
        assertFalse(ZeroReturns.of(List.of(2.0, 2.0, 2.0)).drifts());
    }

    @Test
    void agreesWithHipparchusOnTheTrend() {
        Random random = new Random(17);
        List<Double> readings = random.doubles(12).boxed().toList();
        SimpleRegression regression = new SimpleRegression();
        for (int i = 0; i < readings.size(); i++) {
            regression.addData(i, readings.get(i));
        }
        ZeroReturns returns = ZeroReturns.of(readings);
        assertEquals(regression.getSlope(), returns.slopeM(), 1e-14);
        assertEquals(regression.getSlopeStdErr(), returns.slopeUncertaintyM(), 1e-14);
        assertEquals(regression.getSignificance() < 0.05, returns.drifts());
    }

    @Test
    void refusesFewerThanThree() {
        assertThrows(IllegalArgumentException.class, () -> ZeroReturns.of(List.of(1.0, 2.0)));
    }
}
