// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The usual materials. */
class MaterialTest {
    /** Example H.1 of the GUM takes 11.5·10⁻⁶ with ±2·10⁻⁶ as a rectangle, which is 1.2·10⁻⁶; 10 % is as much. */
    @Test
    void steelGrowsAsInTheGum() {
        assertEquals(11.5e-6, Material.STEEL.expansion().perK());
        assertEquals(2e-6 / Math.sqrt(3), Material.STEEL.expansion().uncertaintyPerK(), 0.1e-6);
    }

    @Test
    void onlyNylonSwells() {
        assertEquals(List.of(Material.NYLON), Material.USUAL.stream().filter(Material::swells).toList());
    }

    /** G = E/2(1 + ν). */
    @Test
    void shearFollowsFromElasticity() {
        assertEquals(80e9, new Elasticity(208e9, 0.3).shearPa(), 1);
        assertThrows(IllegalArgumentException.class, () -> new Elasticity(1, 0.6));
        assertThrows(IllegalArgumentException.class, () -> new Expansion(1, -1));
    }
}
