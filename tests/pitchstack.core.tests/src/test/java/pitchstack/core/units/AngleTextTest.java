// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Angles as people type them, in arc seconds: 3600 a degree, 60 a minute. */
class AngleTextTest {
    private final Scale seconds = new RotaryScale(RotaryScale.ARC_SECONDS);

    @ParameterizedTest
    @CsvSource(quoteCharacter = '|', textBlock = """
            12,             43200
            12.5,           45000
            12.5°,          45000
            1 1/2,          5400
            1/2°,           1800
            12d,            43200
            12 deg,         43200
            12 degrees,     43200
            30",            30
            30 arcsec,      30
            30',            1800
            1 1/2',         90
            30 arcmin,      1800
            12°34'56",      45296
            12° 34' 56",    45296
            12°34′56″,      45296
            1°01',          3660
            12°56",         43256
            -1°30',         -5400
            −30",           -30
            +30",           30
            """)
    void readsDegreesMinutesAndSeconds(String text, long count) {
        assertEquals(count, seconds.parse(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "-", "°", "12 34", "12 34'", "34'12°", "12mm", "1e3", "12°-3'", "1,5"})
    void refusesWhatIsNoAngle(String text) {
        assertThrows(QuantityException.class, () -> seconds.parse(text));
    }

    @Test
    void refusesAnAngleWhosePartsFitButWhoseSumDoesNot() {
        RotaryScale finest = RotaryScale.dividing(java.util.List.of(1L));
        String nearlyAll = Long.MAX_VALUE / finest.turn() * 360 + "°";
        assertThrows(QuantityException.class, () -> finest.parse(nearlyAll + "99999999'"));
    }
}
