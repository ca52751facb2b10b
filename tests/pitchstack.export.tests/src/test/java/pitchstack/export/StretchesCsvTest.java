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
