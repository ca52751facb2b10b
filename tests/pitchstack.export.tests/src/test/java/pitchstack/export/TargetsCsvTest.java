// SPDX-License-Identifier: EPL-2.0
package pitchstack.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.LinearScale;
import pitchstack.core.units.RotaryScale;
import pitchstack.core.units.Scale;
import pitchstack.export.TargetList.BadRow;
import pitchstack.export.TargetList.Row;

class TargetsCsvTest {
    private static final Scale MM = new LinearScale(LengthUnit.MM);
    private static final Scale INCH = new LinearScale(LengthUnit.INCH);
    /** Femtometres in a millimetre and in an inch. */
    private static final long ONE_MM = 1_000_000_000_000L;
    private static final long ONE_INCH = 25_400_000_000_000L;

    /** One table, as spreadsheets of different countries write it. */
    @ParameterizedTest
    @ValueSource(strings = {
        "name,position,tolerance,note\nRail,37.5,0.05,\"first, cut\"\nStile,-4.25,,\n",
        "name;position;tolerance;note\r\nRail;37,5;0,05;first, cut\r\nStile;-4,25;;\r\n",
        "Name\tPosition\tTolerance\tNote\nRail\t37,5\t0,05\tfirst, cut\nStile\t-4,25\n",
        "\uFEFFnote;tolerance (um);NAME;Position [mm]\n\nfirst, cut; 50 ;Rail;37,5\n;;Stile;−4,25",
        "name,position,tolerance,note\nRail,\"37,5\",\"50 µm\",\"first, cut\"\nStile,-4.25\u00A0mm\n",
        "name,x (in),tol,note\nRail,37.5 mm,±0.05 mm,\"first, cut\"\nStile,-4.25mm\n"})
    void readsWhatSpreadsheetsWrite(String text) {
        TargetList list = TargetsCsv.read(text, MM);
        assertEquals(List.of(), list.bad());
        assertEquals(2, list.targets().size());
        Row rail = list.targets().get(0);
        assertEquals("Rail", rail.name());
        assertEquals(37 * ONE_MM + ONE_MM / 2, rail.position());
        assertEquals(OptionalLong.of(ONE_MM / 20), rail.tolerance());
        assertEquals("first, cut", rail.note());
        Row stile = list.targets().get(1);
        assertEquals("Stile", stile.name());
        assertEquals(-4 * ONE_MM - ONE_MM / 4, stile.position());
        assertEquals(OptionalLong.empty(), stile.tolerance());
    }

    @ParameterizedTest
    @ValueSource(strings = {"1.5\n2.25\n", "1,5\n2,25\n", "position\n1,5\n2,25", "1 1/2\n\n2 1/4", "1,5 in\n57.15 mm"})
    void readsPositionsAlone(String text) {
        TargetList list = TargetsCsv.read(text, INCH);
        assertEquals(List.of(), list.bad());
        assertEquals(List.of(ONE_INCH * 3 / 2, ONE_INCH * 9 / 4), list.targets().stream().map(Row::position).toList());
    }

    @Test
    void takesTheUnitOfTheHeaderForBareNumbersOnly() {
        TargetList list = TargetsCsv.read("position (in)\n1\n1 mm\n1/2\n", MM);
        assertEquals(List.of(ONE_INCH, ONE_MM, ONE_INCH / 2), list.targets().stream().map(Row::position).toList());
    }

    @Test
    void readsAnglesInDegrees() {
        Scale turn = new RotaryScale(RotaryScale.ARC_SECONDS);
        assertEquals(List.of(3600L, 5400L, 3660L), TargetsCsv.read("position (deg)\n1\n1,5\n1°01'\n", turn).targets().stream()
                .map(Row::position).toList());
    }

    @Test
    void reportsBadRowsByLineAndKeepsTheRest() {
        TargetList list = TargetsCsv.read("""
                name;position;tolerance
                good;1;0
                letters;ten;0

                nothing;;
                "open;3;0
                thousands;1.234,5;0
                below;4;-1
                wide;5;0;6
                last;7;
                """, MM);
        assertEquals(List.of("good", "last"), list.targets().stream().map(Row::name).toList());
        assertEquals(List.of(2, 10), list.targets().stream().map(Row::line).toList());
        assertEquals(List.of(3, 5, 6, 7, 8, 9), list.bad().stream().map(BadRow::line).toList());
        assertEquals("This row has no position.", list.bad().get(1).sentence());
        assertEquals("A quotation mark in this row is not closed, or has text behind it.", list.bad().get(2).sentence());
        assertTrue(list.bad().get(3).sentence().startsWith("“1.234,5” has more than one comma or point"));
        assertTrue(list.bad().get(4).sentence().startsWith("The tolerance “-1” is below 0"));
        assertTrue(list.bad().get(5).sentence().startsWith("This row has 4 cells, and there are 3 columns"));
    }

    @Test
    void readsCellsOfSeveralLinesAndCountsOnFromThem() {
        TargetList list = TargetsCsv.read("name,position,note\nA,1,\"two\nlines\"\nB,x,\nC,3,\n", MM);
        assertEquals("two\nlines", list.targets().get(0).note());
        assertEquals(List.of(2, 5), list.targets().stream().map(Row::line).toList());
        assertEquals(List.of(4), list.bad().stream().map(BadRow::line).toList());
    }

    @Test
    void saysWhatIsWrongWithAHeader() {
        TargetList nameless = TargetsCsv.read("name,note\nA,1\n", MM);
        assertEquals(List.of(), nameless.targets());
        assertEquals(1, nameless.bad().size());
        assertTrue(nameless.bad().get(0).sentence().startsWith("No column is called “position”"));
        BadRow furlongs = TargetsCsv.read("position (furlongs)\n1\n", MM).bad().get(0);
        assertEquals(1, furlongs.line());
        assertTrue(furlongs.sentence().startsWith("“furlongs” is not a unit of length here"));
    }

    @Test
    void namesTheColumnsItDoesNotUnderstand() {
        TargetList list = TargetsCsv.read("position,colour,name\n1,red,A\n", MM);
        assertEquals(List.of("colour"), list.ignored());
        assertEquals("A", list.targets().get(0).name());
    }
}
