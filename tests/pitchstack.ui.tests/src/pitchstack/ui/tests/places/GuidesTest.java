// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.places;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Setting;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.LinearScale;
import pitchstack.ui.editor.places.AxisPlaces;
import pitchstack.ui.editor.places.Guides;

class GuidesTest {
    private static final double MM = Specs.MM;

    /** At index 0 the 30 rider teeth of 5 mm lie from −75 to 75 mm about the datum, over a base row from −75 to 425 mm. */
    @Test
    void knowsTheEndsOfTheRowsOnSomeBodies() {
        AxisSpec spec = Specs.pair();
        AxisPlaces places = AxisPlaces.of(spec, Setting.of(0, 0));
        assertEquals(List.of(new Guides.Line(-75 * MM, "the first tooth of the base row of “Rack”"),
                new Guides.Line(425 * MM, "the end of the base row of “Rack”")), Guides.rows(spec, places, body -> body == 0));
        List<Guides.Line> carried = Guides.rows(spec, places, body -> body == 1);
        assertEquals(4, carried.size(), "the rider row below and the base row on top");
        assertEquals(new Guides.Line(75 * MM, "the end of the rider row of “Rack”"), carried.get(1));
        assertEquals(List.of(new Guides.Line(0, "the datum")), Guides.marks(spec));
    }

    private static Guides guides(double moved) {
        return new Guides(new LinearScale(LengthUnit.MM), List.of(new Guides.Line(10 * MM, "the low stop"),
                new Guides.Line(12 * MM, "a row"), new Guides.Line(99 * MM, "the high stop")),
                List.of(new Guides.Line(moved * MM, "the carriage")));
    }

    @Test
    void saysHowFarSomethingLiesOffWhatItIsNear() {
        List<Guides.Match> matches = guides(11.5).matches(2 * MM);
        assertEquals(List.of(new Guides.Match(12 * MM, false, "the carriage 0.500 mm left of a row"),
                new Guides.Match(10 * MM, false, "the carriage 1.500 mm right of the low stop")), matches, "the nearest first");
        assertEquals(List.of(), guides(50).matches(2 * MM));
    }

    @Test
    void callsInLineWhatDiffersByLessThanCanBeRead() {
        Guides.Match match = guides(99.000_000_4).matches(2 * MM).get(0);
        assertTrue(match.exact());
        assertEquals("the carriage in line with the high stop", match.words());
    }

    @Test
    void doesNotCompareAThingWithItself() {
        assertEquals(List.of("low stop in line with a row"), guides(50).with(12 * MM, "low stop").matches(MM).stream()
                .map(Guides.Match::words).toList());
    }
}
