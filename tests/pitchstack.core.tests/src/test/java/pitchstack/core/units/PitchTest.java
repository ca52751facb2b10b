// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PitchTest {
    private final Scale mm = new LinearScale(LengthUnit.MM);

    /** p = π·m = π·25.4/DP = 25.4·CP millimetres, to nine decimals by exact arithmetic. */
    @ParameterizedTest
    @CsvSource({"module 0.5, 1.570796327", "module 0.8, 2.513274123", "module 1, 3.141592654", "module 1.25, 3.926990817",
        "module 1.5, 4.712388980", "module 2, 6.283185307", "2.5 mod, 7.853981634", "mod 3, 9.424777961",
        "4 module, 12.566370614", "DP 64, 1.246819584", "48 DP, 1.662426113", "32 DP, 2.493639169", "24DP, 3.324852225",
        "20 dp, 3.989822670", "16 DP, 4.987278338", "12 DP, 6.649704450", "10 DP, 7.979645340", "8 DP, 9.974556675",
        "6 DP, 13.299408900", "0.1 in CP, 2.540000000", "CP 1/8 in, 3.175000000", "1/4 in CP, 6.350000000",
        "1/16 in cp, 1.587500000", "5 mm, 5.000000000", "4.9, 4.900000000", "10 mm CP, 10.000000000"})
    void isTheSpacingThatItsSystemMeans(String text, String millimetres) {
        BigDecimal p = BigDecimal.valueOf(Pitch.parse(text).units(mm), 12);
        assertEquals(new BigDecimal(millimetres), p.setScale(9, RoundingMode.HALF_EVEN));
    }

    /** π = 3.141592653589793… and π/32·25.4 = 2.493639168786898…, half a femtometre being the most that is lost. */
    @Test
    void isRoundedOnceToTheFemtometre() {
        assertEquals(3_141_592_653_590L, Pitch.parse("module 1").units(mm));
        assertEquals(2_493_639_168_787L, Pitch.parse("32 DP").units(mm));
    }

    /** 1.83 % short, which adds up to 4.64 mm over 100 teeth. */
    @Test
    void ofATenthInchCircularIsNot32Dp() {
        long circular = Pitch.parse("0.1 in CP").units(mm);
        long diametral = Pitch.parse("32 DP").units(mm);
        assertNotEquals(circular, diametral);
        assertEquals(4.64, 100 * (circular - diametral) / 1e12, 0.005);
        assertEquals(PitchSystem.CIRCULAR_PITCH, Pitch.parse("0.1 in CP").system());
        assertEquals(PitchSystem.DIAMETRAL_PITCH, Pitch.parse("32 DP").system());
    }

    @Test
    void keepsWhatWasTyped() {
        assertEquals(new Pitch(PitchSystem.CIRCULAR_PITCH, "1/4 in"), Pitch.parse(" 1/4 in CP "));
        assertEquals(new Pitch(PitchSystem.MODULE, "1"), Pitch.parse("Module 1"));
        assertEquals(new Pitch(PitchSystem.TEETH_PER_TURN, "360"), Pitch.parse("360 per turn"));
        assertEquals(new Pitch(PitchSystem.TEETH_PER_TURN, "360"), Pitch.parse("360 teeth per turn"));
        assertEquals(new Pitch(PitchSystem.TEETH_PER_TURN, "360"), Pitch.parse("360/turn"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"DP 0", "-4 DP", "DP", "module", "module one", "1/0 in CP", "5 cubits", "360 per turn",
        "module 1,5", "99999999 module"})
    void isRefusedWithASentence(String text) {
        QuantityException refusal = assertThrows(QuantityException.class, () -> Pitch.parse(text).units(mm));
        assertTrue(refusal.getMessage().endsWith("."), refusal.getMessage());
    }

    @Test
    void isRefusedWhereNothingWasTyped() {
        assertThrows(QuantityException.class, () -> Pitch.parse("  "));
    }

    @Test
    void ofZeroOrBelowIsLeftForACheckToFind() {
        assertEquals(0, Pitch.parse("0 mm").units(mm));
        assertEquals(0, Pitch.parse("module 0").units(mm));
        assertEquals(-1_000_000_000_000L, Pitch.parse("-1 mm").units(mm));
    }

    @Test
    void ofARingDividesTheTurn() {
        RotaryScale scale = RotaryScale.dividing(List.of(360L, 361L));
        assertEquals(scale.turn(), 361 * Pitch.parse("361 per turn").units(scale));
        assertEquals(scale.turn(), 360 * Pitch.parse("1°").units(scale));
        assertEquals(0, Pitch.parse("0 per turn").units(scale));
    }

    @Test
    void ofARingThatDoesNotDivideTheTurnIsRoundedToTheNearestCount() {
        RotaryScale seconds = new RotaryScale(RotaryScale.ARC_SECONDS);
        // 1 296 000 / 361 = 3590.03 and / 1001 = 1294.705.
        assertEquals(3590, Pitch.parse("361 per turn").units(seconds));
        assertEquals(1295, Pitch.parse("1001 per turn").units(seconds));
    }

    @ParameterizedTest
    @ValueSource(strings = {"module 1", "24 DP", "1/4 in CP", "5 mm"})
    void ofALengthIsRefusedOnARotaryAxis(String text) {
        RotaryScale seconds = new RotaryScale(RotaryScale.ARC_SECONDS);
        assertThrows(QuantityException.class, () -> Pitch.parse(text).units(seconds));
    }
}
