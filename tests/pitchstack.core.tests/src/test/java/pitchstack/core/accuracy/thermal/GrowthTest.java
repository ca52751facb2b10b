// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.thermal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchstack.core.accuracy.material.Expansion;
import pitchstack.core.accuracy.material.Material;

/** Growth that can be done by hand: L·α·ΔT, about the reference temperature of ISO 1. */
class GrowthTest {
    private static Expansion of(String name) {
        return Material.USUAL.stream().filter(m -> m.name().equals(name)).findFirst().orElseThrow().expansion();
    }

    @ParameterizedTest
    @CsvSource({"steel,1,10,115.0", "aluminium,1,10,231.0", "PLA,1,10,680.0", "steel,0.3,15,51.75", "PLA,0.3,15,306.0",
        "steel,0.2609,10,30.0", "aluminium,0.1299,10,30.0", "PLA,0.0441,10,30.0"})
    void growsByLengthExpansionAndRise(String name, double lengthM, double riseK, double um) {
        Growth growth = Growth.since20(List.of(new Growth.Part(lengthM, of(name))), new Temperature(20 + riseK, 0));
        assertEquals(um, growth.valueM() * 1e6, 0.05);
    }

    /** 100 mm of PLA on steel, 10 K: 56.5 µm. */
    @Test
    void onlyTheDifferenceOfTwoMaterialsShows() {
        List<Growth.Part> chain = List.of(new Growth.Part(0.1, of("PLA")), new Growth.Part(-0.1, of("steel")));
        assertEquals(56.5e-6, Growth.since20(chain, new Temperature(30, 0)).valueM(), 1e-12);
        assertEquals(-56.5e-6, Growth.since20(chain, new Temperature(10, 0)).valueM(), 1e-12);
        // From 15 °C in winter to 28 °C in summer.
        assertEquals(1.3 * 56.5e-6, Growth.between(chain, 15, new Temperature(28, 0)).valueM(), 1e-12);
    }

    @Test
    void aRackOfTheMaterialOfTheWorkGrowsWithIt() {
        List<Growth.Part> chain = List.of(new Growth.Part(0.7, of("steel")), new Growth.Part(-0.7, of("steel")));
        Growth growth = Growth.since20(chain, new Temperature(35, 2));
        assertEquals(0, growth.valueM(), 1e-18);
        assertEquals(0, growth.uncertaintyM(), 1e-18);
    }

    /** 610 mm steel ± 2 K: α·L·2/√3 = 8.10 µm; with 10 % of α at 30 °C another 7.02 µm, and 0.81 µm of second order. */
    @Test
    void knowsHowWellItIsKnown() {
        List<Growth.Part> steel = List.of(new Growth.Part(0.61, of("steel")));
        double u = 2 / Math.sqrt(3);
        double first = 0.61 * 11.5e-6 * u;
        assertEquals(8.10e-6, first, 5e-9);
        double expected = Math.sqrt(first * first + Math.pow(0.61 * 1.15e-6 * 10, 2) + Math.pow(0.61 * 1.15e-6 * u, 2));
        assertEquals(expected, Growth.since20(steel, new Temperature(30, u)).uncertaintyM(), 1e-15);
        assertEquals(Math.hypot(first, 0.1 * first), Growth.since20(steel, new Temperature(20, u)).uncertaintyM(), 1e-15);
    }

    @Test
    void aimsLongerInAWarmShopAndComesBack() {
        Temperature warm = new Temperature(30, 0);
        assertEquals(1.000231, Growth.aimM(1, of("aluminium"), warm), 1e-12);
        assertEquals(1, Growth.at20M(Growth.aimM(1, of("aluminium"), warm), of("aluminium"), warm), 1e-15);
        assertThrows(IllegalArgumentException.class, () -> new Temperature(Double.NaN, 0));
    }

    /** 0.5 to 1.5 % of 100 mm is 0.5 to 1.5 mm, more than 45 K of warmth at the least. */
    @Test
    void warnsOfMoistureInNylonOnly() {
        Growth.Swelling swelling = Growth.swelling(Material.NYLON, 0.1).orElseThrow();
        assertEquals(0.5e-3, swelling.leastM(), 1e-12);
        assertEquals(1.5e-3, swelling.mostM(), 1e-12);
        assertTrue(Growth.swelling(Material.PLA, 0.1).isEmpty());
    }
}
