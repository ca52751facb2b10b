// SPDX-License-Identifier: EPL-2.0
package pitchstack.export;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.StringReader;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.core.coverage.Coverage;
import pitchstack.core.coverage.Reached;
import pitchstack.core.coverage.Stretch;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.LinearScale;
import pitchstack.core.units.RotaryScale;

class StretchesCsvTest {
    @TempDir
    private Path folder;

    /** By hand: within 0.05 mm of the six positions, inside −4.9 to 9.9 mm, and a femtometre short of where the next begins. */
    @Test
    void listsEveryStretchExactly() throws Exception {
        AxisSpec axis = SmallStack.axis(folder, "mm");
        Coverage coverage = SmallStack.coverage(axis, "0.05 mm");
        assertEquals(List.of(
                "from (mm),to (mm),length (mm),reached",
                "-4.9,-4.85,0.05,clean",
                "-4.849999999999,-0.050000000001,4.799999999998,not reached",
                "-0.05,0.05,0.1,clean",
                "0.050000000001,0.15,0.099999999999,worn only",
                "0.150000000001,4.849999999999,4.699999999998,not reached",
                "4.85,4.95,0.1,clean",
                "4.950000000001,5.05,0.099999999999,worn only",
                "5.050000000001,9.849999999999,4.799999999998,not reached",
                "9.85,9.9,0.05,worn only"), StretchesCsv.of(axis.scale(), coverage.stretches()).lines().toList());
    }

    @Test
    void isReadBackAsTheSameStretches() throws Exception {
        AxisSpec axis = SmallStack.axis(folder, "in");
        List<Stretch> gaps = SmallStack.coverage(axis, "0.05 mm").gaps();
        assertEquals(3, gaps.size());
        List<CSVRecord> rows = CSVFormat.RFC4180.parse(new StringReader(StretchesCsv.of(axis.scale(), gaps))).getRecords();
        assertEquals(4, rows.size());
        for (int i = 0; i < 3; i++) {
            assertEquals(gaps.get(i).low(), femtometres(rows.get(i + 1).get(0)));
            assertEquals(gaps.get(i).high(), femtometres(rows.get(i + 1).get(1)));
            assertEquals("not reached", rows.get(i + 1).get(3));
        }
    }

    /** The travel has a hole between 3 and 10 mm, as that of a rotary axis may. */
    @Test
    void comparesTwoCoveragesStretchByStretch() {
        long mm = 1_000_000_000_000L;
        List<Stretch> now = List.of(new Stretch(0, 2 * mm, Reached.CLEAN), new Stretch(2 * mm + 1, 3 * mm, Reached.NOT),
                new Stretch(10 * mm, 12 * mm, Reached.WORN));
        List<Stretch> supposed = List.of(new Stretch(0, mm, Reached.CLEAN), new Stretch(mm + 1, 3 * mm, Reached.NOT),
                new Stretch(10 * mm, 11 * mm, Reached.WORN), new Stretch(11 * mm + 1, 12 * mm, Reached.NOT));
        assertEquals(List.of("from (mm),to (mm),length (mm),reached,supposed",
                "0,1,1,clean,clean",
                "1.000000000001,2,0.999999999999,clean,not reached",
                "2.000000000001,3,0.999999999999,not reached,not reached",
                "10,11,1,worn only,worn only",
                "11.000000000001,12,0.999999999999,worn only,not reached"),
                StretchesCsv.of(new LinearScale(LengthUnit.MM), now, supposed).lines().toList());
    }

    @Test
    void givesAnglesInDegrees() {
        RotaryScale scale = new RotaryScale(1_296_000);
        assertEquals(List.of("from (deg),to (deg),length (deg),reached", "0,90,90,clean"),
                StretchesCsv.of(scale, List.of(new Stretch(0, 324_000, Reached.CLEAN))).lines().toList());
    }

    private static long femtometres(String millimetres) {
        return new BigDecimal(millimetres).movePointRight(12).longValueExact();
    }
}
