// SPDX-License-Identifier: EPL-2.0
package pitchstack.export;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.core.coverage.Seatings;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Setting;

class SeatingsCsvTest {
    @TempDir
    private Path folder;

    /** Rack 0, 1, 1 stands on its base teeth 0, 1, 1; fine row −1, 0, 1, which starts at its tooth 1, on 0, 1, 2. */
    @Test
    void hasOneRowAToothOfEveryRow() throws Exception {
        AxisSpec axis = SmallStack.axis(folder, "mm");
        Seatings seatings = Seatings.ofAll(axis, List.of(Setting.of(0, -1), Setting.of(1, 0), Setting.of(1, 1)));
        assertEquals(List.of("stage,row,tooth,seatings", "Rack,base,0,1", "Rack,base,1,2", "Rack,rider,0,3", "Fine,base,0,1",
                "Fine,base,1,1", "Fine,base,2,1", "Fine,rider,0,3"), SeatingsCsv.of(axis, seatings).lines().toList());
    }
}
