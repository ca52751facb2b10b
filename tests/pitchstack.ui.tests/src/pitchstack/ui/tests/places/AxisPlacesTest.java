// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.places;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.ToothSpan;
import pitchstack.ui.editor.places.AxisPlaces;
import pitchstack.ui.editor.places.Extent;
import pitchstack.ui.editor.places.RowPlace;

class AxisPlacesTest {
    private static final double MM = Specs.MM;

    @Test
    void standsTheCarriageAtItsPosition() {
        AxisSpec spec = Specs.pair();
        for (int n = -18; n <= 48; n++) {
            Setting setting = Setting.of(n, -n);
            assertEquals(spec.position(setting), AxisPlaces.of(spec, setting).carriage(), 1, "0.1 mm a tooth both ways");
        }
    }

    @Test
    void putsTheRiderOverTheBaseToothThatItsIndexNames() {
        AxisPlaces places = AxisPlaces.of(Specs.pair(), Setting.of(12, -7));
        for (int stage = 0; stage < 2; stage++) {
            AxisPlaces.Rows rows = places.stages().get(stage);
            int over = stage == 0 ? 12 : 30 - 7;
            assertEquals(rows.base().edge(over), rows.rider().edge(0), 0.001 * MM);
            assertEquals(rows.base().edge(over + 30), rows.rider().edge(30), 0.001 * MM);
        }
        assertEquals(new ToothSpan(12, 41), places.stages().get(0).engagedBase());
        assertEquals(new ToothSpan(0, 29), places.stages().get(0).engagedRider());
    }

    @Test
    void carriesWhatRidesOnAMovedBody() {
        AxisPlaces before = AxisPlaces.of(Specs.pair(), Setting.of(0, 0));
        AxisPlaces after = AxisPlaces.of(Specs.pair(), Setting.of(10, 0));
        assertEquals(before.bodies().get(0), after.bodies().get(0));
        assertEquals(50 * MM, after.bodies().get(1).reference() - before.bodies().get(1).reference(), 1);
        assertEquals(50 * MM, after.bodies().get(2).extent().from() - before.bodies().get(2).extent().from(), 1);
        assertEquals(50 * MM, after.stages().get(1).base().left() - before.stages().get(1).base().left(), 1);
    }

    @Test
    void reachesAsFarAsTheIndicesGo() {
        Extent reach = AxisPlaces.of(Specs.pair(), Setting.of(0, 0)).reach();
        // The carriage, 30 teeth of 4.9 mm wide, goes furthest: both stages at their first, or both at their last index.
        assertEquals(-18 * 5 - 48 * 4.9 - 30 * 4.9 / 2, reach.from() / MM, 0.001);
        assertEquals(88 * 5 + 48 * 4.9 + 30 * 4.9 / 2, reach.to() / MM, 0.001);
    }

    @Test
    void neverAddsUpAPitch() {
        long pitch = Math.round(Math.PI * MM);
        RowPlace row = new RowPlace(-1e15, pitch, 20_000);
        assertEquals(-1_000_000_000_000_000L + 20_000 * pitch, (long) row.edge(20_000), 8, "a double of that size holds 8 fm");
    }

    @Test
    void findsTheTeethOfAStretchAsCountingDoes() {
        Random random = new Random(7);
        for (int round = 0; round < 2000; round++) {
            RowPlace row = new RowPlace(random.nextInt(200) - 100, 1 + random.nextInt(9), random.nextInt(60));
            double from = random.nextDouble() * 800 - 300;
            Extent stretch = new Extent(from, from + random.nextDouble() * 300);
            ToothSpan found = row.teethIn(stretch);
            for (int tooth = 0; tooth < row.teeth(); tooth++) {
                boolean meets = row.edge(tooth + 1) > stretch.from() && row.edge(tooth) < stretch.to();
                if (meets) {
                    assertTrue(found.first() <= tooth && tooth <= found.last(), row + " " + stretch + " lacks " + tooth);
                }
            }
            assertTrue(found.count() <= stretch.length() / row.pitch() + 2, row + " " + stretch + " has " + found);
        }
    }

    @Test
    void takesStacksThatAreWrong() {
        AxisSpec wrong = Specs.axis(5, Specs.stage(0, 10, 5, 0, 1), Specs.stage(-3, -4, -5, 7, 9), Specs.stage(100, 0, 0, 0, 1));
        AxisPlaces places = AxisPlaces.of(wrong, Setting.of(3, 900, -2));
        assertEquals(4, places.bodies().size());
        assertTrue(places.reach().length() > 0);
        for (AxisPlaces.Rows rows : places.stages()) {
            assertTrue(rows.base().teeth() >= 0 && rows.base().pitch() >= 0);
        }
        assertEquals(1, AxisPlaces.of(Specs.axis(5), Setting.zero(0)).bodies().size());
    }
}
