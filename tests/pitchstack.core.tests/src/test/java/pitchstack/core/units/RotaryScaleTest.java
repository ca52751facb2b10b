// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigInteger;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RotaryScaleTest {
    private final RotaryScale seconds = new RotaryScale(RotaryScale.ARC_SECONDS);

    @ParameterizedTest
    @CsvSource({"128, 81, 125", "360, 361, 7", "1, 1, 1", "999, 1000, 1001"})
    void dividesATurnSoThatEveryRingAndTheArcSecondAreWhole(long a, long b, long c) {
        long turn = RotaryScale.dividing(List.of(a, b, c)).turn();
        for (long whole : new long[] {a, b, c, RotaryScale.ARC_SECONDS}) {
            assertEquals(0, turn % whole, "turn " + turn + " by " + whole);
        }
    }

    @Test
    void countsMillionthsOfAnArcSecondWhereThereIsRoom() {
        assertEquals(RotaryScale.ARC_SECONDS * 1_000_000, RotaryScale.dividing(List.of(360L)).turn());
    }

    @Test
    void refusesRingsWithoutACommonDivision() {
        assertThrows(QuantityException.class,
                () -> RotaryScale.dividing(List.of(19_997L, 19_993L, 19_991L, 19_979L)));
    }

    @Test
    void refusesATurnThatDoesNotHoldTheArcSecond() {
        assertThrows(IllegalArgumentException.class, () -> new RotaryScale(0));
        assertThrows(IllegalArgumentException.class, () -> new RotaryScale(-RotaryScale.ARC_SECONDS));
        assertThrows(IllegalArgumentException.class, () -> new RotaryScale(RotaryScale.ARC_SECONDS + 1));
    }

    /** By hand: half a turn is 648 000 arc seconds; it counts as up. */
    @ParameterizedTest
    @CsvSource({"10, 0, 10", "0, 10, -10", "1295990, 10, -20", "10, 1295990, 20", "648000, 0, 648000",
        "648001, 0, -647999", "0, 648000, 648000", "-10, 10, -20", "1296010, 10, 0"})
    void goesTheShortWayRound(long position, long target, long difference) {
        assertEquals(difference, seconds.difference(position, target));
    }

    @Test
    void goesTheShortWayRoundFromTheFarthestCountsToo() {
        // 2⁶³ − 1 and −2⁶³ differ by 2⁶⁴ − 1.
        long difference = BigInteger.TWO.pow(64).subtract(BigInteger.ONE).mod(BigInteger.valueOf(1_296_000))
                .longValueExact();
        assertEquals(difference > 648_000 ? difference - 1_296_000 : difference,
                seconds.difference(Long.MAX_VALUE, Long.MIN_VALUE));
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "1296000, 0", "-1, 1295999", "1296001, 1"})
    void wrapsIntoOneTurn(long count, long wrapped) {
        assertEquals(wrapped, seconds.wrap(count));
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '|', textBlock = """
            45296,   12°34'56",   12.582222222222222
            -45296,  -12°34'56",  -12.582222222222222
            0,       0°00'00",    0
            3600,    1°00'00",    1
            59,      0°00'59",    0.016388888888889
            1296000, 360°00'00",  360
            """)
    void showsDegreesMinutesAndSeconds(long count, String text, String degrees) {
        assertEquals(text, seconds.format(count));
        assertEquals(degrees, seconds.decimal(count));
    }

    @Test
    void showsThousandthsOfASecondAndCarriesTheRounding() {
        RotaryScale fine = new RotaryScale(RotaryScale.ARC_SECONDS * 10_000);
        assertEquals("0°00'00.5\"", fine.format(5000));
        assertEquals("0°01'00\"", fine.format(599_999));
        assertEquals("+0.5\"", fine.formatError(5000));
        assertEquals("-3\"", fine.formatError(-30_000));
    }

    /** A person's language must not change the digits that another program or another person reads. */
    @Test
    void showsTheSameDigitsInEveryLanguage() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertEquals("12°04'06\"", seconds.format(12 * 3600 + 4 * 60 + 6));
        } finally {
            Locale.setDefault(before);
        }
    }
}
