// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Print scales by hand. */
class PrintScaleTest {
    /** 0.02 mm over 200 mm are 100 ppm. */
    @Test
    void oneLongSpanGivesTheScaleAndItsUncertainty() {
        PrintScale x = PrintScale.of(List.of(new SpanReading(0.2, 0.1996, 20e-6)));
        assertEquals(-0.002, x.scale().value(), 1e-12);
        assertEquals(100e-6, x.scale().uncertainty(), 1e-12);
        assertEquals(0, x.offsetM().value());
        assertEquals(1 / 0.998, x.factor(), 1e-12);
    }

    @Test
    void equalSpansAreAveraged() {
        PrintScale x = PrintScale.of(List.of(new SpanReading(0.1, 0.1001, 20e-6), new SpanReading(0.1, 0.1003, 20e-6)));
        assertEquals(0.002, x.scale().value(), 1e-12);
        assertEquals(200e-6 / Math.sqrt(2), x.scale().uncertainty(), 1e-12);
    }

    /** Two lengths, 50 and 150 mm, 0.1 mm too long each by offset, and 0.3 % by scale: u = √2·u/100 mm. */
    @Test
    void twoLengthsTellOffsetFromScale() {
        PrintScale y = PrintScale.of(List.of(new SpanReading(0.05, 0.05025, 10e-6), new SpanReading(0.15, 0.15055, 10e-6)));
        assertEquals(0.003, y.scale().value(), 1e-12);
        assertEquals(100e-6, y.offsetM().value(), 1e-15);
        assertEquals(Math.sqrt(2) * 10e-6 / 0.1, y.scale().uncertainty(), 1e-12);
    }

    @Test
    void refusesALengthOfNothing() {
        assertThrows(IllegalArgumentException.class, () -> new SpanReading(0, 0.1, 1e-6));
        assertThrows(IllegalArgumentException.class, () -> new SpanReading(0.1, 0.1, 0));
    }
}
