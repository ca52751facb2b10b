// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class RulerStepTest {
    @ParameterizedTest
    @CsvSource({"0.9,1,1,-3", "1,1,1,-3", "1.01,2,2,-6", "4,5,5,-15", "60,100,100,-300", "0.03,0.05,0.05,-0.15",
        "900,1000,1000,-3000"})
    void dividesMillimetresByOneTwoAndFive(double least, double step, String one, String minusThree) {
        RulerStep ruler = RulerStep.of(new LinearScale(LengthUnit.MM), least * 1e12);
        assertEquals(step * 1e12, ruler.counts(), step);
        assertEquals(one, ruler.label().apply(1));
        assertEquals(minusThree, ruler.label().apply(-3));
        assertEquals("0", ruler.label().apply(0).replaceAll("\\.0+", ""));
    }

    @ParameterizedTest
    @EnumSource(LengthUnit.class)
    void standsEveryTickWhereItsNumberSays(LengthUnit unit) {
        LinearScale scale = new LinearScale(unit);
        for (double least = 1e6; least < 1e15; least *= 3.7) {
            RulerStep ruler = RulerStep.of(scale, least);
            assertTrue(ruler.counts() >= least && ruler.counts() <= 2.5 * least);
            for (long k : new long[] {-1234, -1, 0, 1, 7, 3000}) {
                double tick = k * ruler.counts();
                assertEquals(scale.parse(ruler.label().apply(k)), tick, Math.abs(tick) * 1e-15 + 0.5, unit + " " + least + " " + k);
            }
        }
    }

    @Test
    void dividesAngles() {
        RotaryScale scale = RotaryScale.dividing(List.of(360L));
        double degree = scale.turn() / 360.0;
        RulerStep ten = RulerStep.of(scale, 7 * degree);
        assertEquals(10 * degree, ten.counts(), 1);
        assertEquals("350°", ten.label().apply(-1), "angles come round again");
        assertEquals("0°", ten.label().apply(36));
        RulerStep minutes = RulerStep.of(scale, degree / 13);
        assertEquals(degree / 12, minutes.counts(), 1);
        assertEquals("1°05'", minutes.label().apply(13));
        RulerStep seconds = RulerStep.of(scale, degree / 1000);
        assertEquals("0°00'05\"", seconds.label().apply(1));
        assertEquals(scale.turn(), RulerStep.of(scale, 300 * degree).counts());
    }

    @Test
    void dividesEveryStepIntoWholeParts() {
        RotaryScale scale = RotaryScale.dividing(List.of(360L));
        double second = scale.turn() / 1_296_000.0;
        for (int step = 1; step < 600_000; step = step * 5 / 4 + 1) {
            RulerStep ruler = RulerStep.of(scale, step * second);
            double part = ruler.counts() / second / ruler.parts();
            assertTrue(ruler.counts() < 5 * second || part == Math.rint(part), step + " in " + ruler.parts());
        }
    }
}
