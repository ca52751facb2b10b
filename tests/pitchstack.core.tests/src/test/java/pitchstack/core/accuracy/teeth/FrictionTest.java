// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.teeth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The statics of wedges. */
class FrictionTest {
    /** tan(α − atan μ) and sin α/(sin α + μ·cos α), worked out apart from this program. */
    @ParameterizedTest
    @CsvSource({"14.5,0.3,0,0.4630", "20,0.1,0.2547,0.7845", "20,0.3,0.0577,0.5482", "20,0.4,0,0.4764",
        "30,0.3,0.2364,0.6581", "45,0.3,0.5385,0.7692"})
    void givesHoldDownAndSeatingEfficiency(double degrees, double mu, double holdDown, double efficiency) {
        Friction friction = new Friction(mu);
        double alpha = Math.toRadians(degrees);
        assertEquals(holdDown, friction.holdDownRatio(alpha), 6e-5);
        assertEquals(efficiency, friction.seatingEfficiency(alpha), 6e-5);
        assertEquals(holdDown == 0, friction.locks(alpha));
    }

    /** A wedge in balance on both flanks: N(sin α + μ·cos α) pressed in, N(μ·cos α − sin α) to pull it out, each flank. */
    @Test
    void lockingFlanksNeedAPullAndOthersFreeThemselves() {
        double alpha = Math.toRadians(20);
        Friction dry = new Friction(0.7);
        double onFlank = 1 / (2 * (Math.sin(alpha) + 0.7 * Math.cos(alpha)));
        assertEquals(2 * onFlank * (0.7 * Math.cos(alpha) - Math.sin(alpha)), dry.releaseRatio(alpha), 1e-12);
        assertEquals(0, new Friction(0.2).releaseRatio(alpha));
    }

    @Test
    void dryPlasticLocksAtUsualAnglesButDoesNotJam() {
        // At 0.7 the friction angle is 35°.
        Friction dry = new Friction(0.7);
        assertEquals(35, Math.toDegrees(dry.angleRad()), 0.01);
        assertTrue(dry.locks(Math.toRadians(20)) && dry.locks(Math.toRadians(30)));
        assertFalse(dry.jams(Math.toRadians(30)));
        assertTrue(dry.jams(Math.toRadians(60)));
    }

    @Test
    void withoutFrictionHoldingTakesTheTangent() {
        assertEquals(Math.tan(0.4), new Friction(0).holdDownRatio(0.4), 1e-15);
        assertEquals(1, new Friction(0).seatingEfficiency(0.4), 1e-15);
        assertThrows(IllegalArgumentException.class, () -> new Friction(-0.1));
    }

    @ParameterizedTest
    @CsvSource({"10,0.0311", "15,0.0718", "20,0.1325", "30,0.3333", "45,1"})
    void herringboneHoldsAcrossByTheSquareOfTheTangent(double degrees, double ratio) {
        assertEquals(ratio, Herringbone.acrossOverAlong(Math.toRadians(degrees)), 6e-5);
    }
}
