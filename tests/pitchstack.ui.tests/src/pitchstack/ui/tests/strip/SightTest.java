// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.strip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.LinearScale;
import pitchstack.core.units.RotaryScale;
import pitchstack.ui.views.coverage.strip.Sight;
import pitchstack.ui.views.coverage.strip.Spot;

/** Looking at a part of a travel from 0 to 1000, with 10 at the closest. */
class SightTest {
    private final Sight all = Sight.all(0, 1000, 10);

    @Test
    void zoomsAboutThePositionUnderThePointer() {
        Sight half = all.zoom(2, 300);
        assertEquals(500, half.size());
        assertEquals(150, half.from(), "300 stays at three tenths of the width");
        assertEquals(all.x(300, 800), half.x(300, 800), 1e-9);
        assertEquals(300, half.position(half.x(300, 800), 800), 1e-9);
    }

    @Test
    void goesNoFartherThanTheTravelAndNoCloserThanTheLeast() {
        assertEquals(all, all.zoom(0.5, 300));
        assertEquals(10, all.zoom(1e9, 300).size());
        assertEquals(new Sight(0, 1000, 10, 500, 1000), all.zoom(2, 300).pan(1e6));
        assertEquals(new Sight(0, 1000, 10, 0, 500), all.zoom(2, 300).pan(-1e6));
        assertTrue(all.zoom(2, 300).zoom(0.5, 900).isAll());
    }

    @Test
    void showsSomethingAroundATravelOfOnePosition() {
        Sight point = Sight.all(7, 7, 10);
        assertEquals(2, point.from());
        assertEquals(12, point.to());
        assertEquals(point, point.zoom(3, 7));
    }

    @Test
    void keepsItsPlaceOnAChangedTravel() {
        Sight longer = Sight.all(0, 2000, 10);
        assertEquals(longer, all.on(longer), "who looks at all of it goes on to do so");
        assertEquals(new Sight(0, 2000, 10, 150, 650), all.zoom(2, 300).on(longer));
        Sight shorter = Sight.all(0, 400, 10);
        assertEquals(shorter, all.zoom(2, 300).on(shorter));
        assertFalse(all.zoom(2, 300).isAll());
    }

    /** 96 in on 960 pixels: a pixel is 0.1 in, so that the roundest position within one is a multiple of 0.05 or 0.1 in. */
    @Test
    void pointsAtRoundPositions() {
        LinearScale inch = new LinearScale(LengthUnit.INCH);
        Sight fence = Sight.all(0, 96 * 25.4e12, 1e9);
        Spot spot = Spot.at(inch, fence, 240.2, 960);
        assertEquals(24 * 25_400_000_000_000L, spot.position(), spot.text());
        assertEquals(24, Double.parseDouble(spot.text()));
        assertEquals(0, Spot.at(inch, fence, -3, 960).position(), "beside the end is the end");
    }

    @Test
    void pointsAtAnglesThatCanBeTyped() {
        RotaryScale scale = RotaryScale.dividing(List.of(360L));
        Spot spot = Spot.at(scale, Sight.all(0, scale.turn() - 1, 1), 100, 400);
        assertEquals(scale.turn() / 4, spot.position(), spot.text());
    }
}
