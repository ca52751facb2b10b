// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lengths as people type and read them. 1 in is 25.4 mm exactly, so every count here is exact arithmetic by hand. */
class LengthTextTest {
    private final Scale mm = new LinearScale(LengthUnit.MM);
    private final Scale inch = new LinearScale(LengthUnit.INCH);

    @ParameterizedTest
    @CsvSource(quoteCharacter = '|', textBlock = """
            742.3,          742300000000000
            742.3 mm,       742300000000000
            742.3MM,        742300000000000
            20 um,          20000000000
            20 µm,          20000000000
            20 μm,          20000000000
            -0.5 micron,    -500000000
            .25,            250000000000
            5.,             5000000000000
            +3 mm,          3000000000000
            −3 mm,          -3000000000000
            0.1 in,         2540000000000
            1/4 in,         6350000000000
            20 thou,        508000000000
            1/2 thou,       12700000000
            37 5/8in,       955675000000000
            37-5/8",        955675000000000
            37.625 inches,  955675000000000
            -1 1/2 in,      -38100000000000
            1/3,            333333333333
            2/3,            666666666667
            0.0000000000005,  0
            0.0000000000015,  2
            0.000000000001, 1
            """)
    void areReadInMillimetres(String text, long femtometres) {
        assertEquals(femtometres, mm.parse(text));
    }

    @Test
    void takeTheUnitOfTheAxisWhereNoneIsTyped() {
        assertEquals(mm.parse("37 5/8 in"), inch.parse("37 5/8"));
        assertEquals(mm.parse("12"), inch.parse("12 mm"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "mm", "-", ".", "1,5 mm", "5 furlongs", "5 ft", "1e3", "1/0 in", "3 mm 4", "--3",
        "0x10", "1/2/3", "12 5", "1 2 3/4", "NaN", "9223.4 m", "99999999999999 mm", "9300000 mm", "1.5/2"})
    void areRefusedWhereTheyAreNoLength(String text) {
        QuantityException refusal = assertThrows(QuantityException.class, () -> mm.parse(text));
        assertTrue(refusal.getMessage().endsWith("."), refusal.getMessage());
    }

    @Test
    void areRefusedWhereTheNumberIsEndless() {
        assertThrows(QuantityException.class, () -> mm.parse("1" + "0".repeat(100)));
    }

    @Test
    void reachToNineThousandMetres() {
        assertEquals(9_223_372_036_854_775_807L, mm.parse("9223372.036854775807"));
        assertThrows(QuantityException.class, () -> mm.parse("9223372.036854775808"));
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '|', textBlock = """
            955675000000000, 955.675 mm,  37.625 in,  955.675
            2540000000000,   2.540 mm,    0.100 in,   2.54
            -25400000000,    -0.0254 mm,  -0.001 in,  -0.0254
            1,               0.000 mm,    0.000 in,   0.000000000001
            0,               0.000 mm,    0.000 in,   0
            50000000,        0.000 mm,    0.000 in,   0.00005
            150000000,       0.0002 mm,   0.00001 in, 0.00015
            100000000000000, 100.000 mm,  3.93701 in, 100
            """)
    void areShownToATenthOfAMicrometreOrAHundredthOfAThou(long count, String inMm, String inInch, String decimal) {
        assertEquals(inMm, mm.format(count));
        assertEquals(inInch, inch.format(count));
        assertEquals(decimal, mm.decimal(count));
        assertEquals(decimal, inch.decimal(count));
    }

    /** 1 in is 25 400 000 000 000 fm, 1/64 in 396 875 000 000 fm. */
    @ParameterizedTest
    @CsvSource({"955675000000000, 37 5/8 in", "-955675000000000, -37 5/8 in", "396875000000, 1/64 in", "-6350000000000, -1/4 in",
        "0, 0 in", "304800000000000, 12 in", "955675000000001, 37.625 in", "955929000000000, 37.635 in"})
    void areShownAsFractionsOnlyWhereTheyAreSuch(long count, String text) {
        LinearScale fractions = new LinearScale(LengthUnit.INCH, true);
        assertEquals(text, fractions.format(count));
        assertTrue(Math.abs(fractions.parse(text) - count) <= 1, "what is shown can be typed");
    }

    @Test
    void areShownAsFractionsOfInchesOnly() {
        assertEquals("25.000 mm", new LinearScale(LengthUnit.MM, true).format(25_000_000_000_000L));
    }

    @Test
    void showTheSignOfAnError() {
        assertEquals("+0.010 mm", mm.formatError(10_000_000_000L));
        assertEquals("-0.010 mm", mm.formatError(-10_000_000_000L));
        assertEquals("0.000 mm", mm.formatError(0));
    }

    @Test
    void differBySubtraction() {
        assertEquals(-3, mm.difference(4, 7));
        assertEquals(4, mm.wrap(4));
        assertThrows(ArithmeticException.class, () -> mm.difference(Long.MAX_VALUE, -1));
    }

    /** 220 π = 691.150384, and 691.150384 / 25.4 = 27.2106. */
    @Test
    void roundsALongWayToAThousandth() {
        assertEquals("691.150 mm", new LinearScale(LengthUnit.MM).formatWay(691_150_384_000_000L));
        assertEquals("27.211 in", new LinearScale(LengthUnit.INCH).formatWay(-691_150_384_000_000L));
    }
}
