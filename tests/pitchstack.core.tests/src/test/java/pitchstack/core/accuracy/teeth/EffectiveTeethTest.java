// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.teeth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Effective numbers whose variance can be done by hand. */
class EffectiveTeethTest {
    @Test
    void independentTeethAllCountAndEqualOnesCountAsOne() {
        assertEquals(25, EffectiveTeeth.fading(25, 0), 1e-12);
        assertEquals(1, EffectiveTeeth.of(25, j -> 1), 1e-12);
        assertEquals(1, EffectiveTeeth.fading(1, 0.5), 1e-12);
    }

    /** Two teeth: var = σ²(1 + ρ)/2. Three, neighbours only: σ²(3 + 4ρ)/9. */
    @Test
    void agreesWithHandSums() {
        assertEquals(2 / 1.6, EffectiveTeeth.of(2, j -> 0.6), 1e-12);
        assertEquals(9 / (3 + 4 * 0.3), EffectiveTeeth.of(3, j -> j == 1 ? 0.3 : 0), 1e-12);
    }

    /** Closed form of Σ(1 − j/N)ρʲ: N_eff = N/[(1 + ρ)/(1 − ρ) − 2ρ(1 − ρᴺ)/(N(1 − ρ)²)]. */
    @ParameterizedTest
    @CsvSource({"10,0.2", "25,0.5", "50,0.9"})
    void agreesWithTheClosedFormOfFadingErrors(int n, double rho) {
        double closed = (1 + rho) / (1 - rho) - 2 * rho * (1 - Math.pow(rho, n)) / (n * (1 - rho) * (1 - rho));
        assertEquals(n / closed, EffectiveTeeth.fading(n, rho), 1e-9);
    }

    @Test
    void errorsThatAlternateAverageBetterThanIndependentOnes() {
        assertEquals(9 / (3 - 4 * 0.5), EffectiveTeeth.of(3, j -> j == 1 ? -0.5 : 0), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> EffectiveTeeth.of(3, j -> -1));
    }
}
