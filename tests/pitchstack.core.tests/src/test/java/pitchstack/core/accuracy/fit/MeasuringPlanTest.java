// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import pitchstack.core.stack.Direction;

/** The plan of what to measure. */
class MeasuringPlanTest {
    @Test
    void visitsEveryStageEvenlyFromBothSides() {
        List<MeasuringPlan.Line> plan = MeasuringPlan.of(MadeUpDevice.AXIS, MadeUpDevice.HOME, 5, 2);
        // Three stages, five settings, two sides, two runs.
        assertEquals(3 * 5 * 2 * 2, plan.size());
        assertEquals(List.of(0, 50, 100, 150, 200), plan.stream().limit(5).map(line -> line.setting().index(0)).toList());
        assertEquals(List.of(200, 150, 100, 50, 0),
                plan.stream().skip(5).limit(5).map(line -> line.setting().index(0)).toList());
        assertEquals(30, plan.stream().filter(line -> line.direction() == Direction.BACK).count());
        assertEquals(2, plan.stream().mapToInt(MeasuringPlan.Line::run).max().orElseThrow());
    }

    @Test
    void tellsEveryStage() {
        List<Reading> readings = new MadeUpDevice(1, 1e-6, 0)
                .run(MeasuringPlan.of(MadeUpDevice.AXIS, MadeUpDevice.HOME, 2, 1));
        assertTrue(Identifiability.of(MadeUpDevice.STAGES, readings).isComplete());
    }

    @Test
    void namesAShortStageOnceForEachOfItsIndices() {
        assertEquals(200 + 1 + 21 + 21, MeasuringPlan.of(MadeUpDevice.AXIS, MadeUpDevice.HOME, 201, 1).size() / 2);
    }

    @Test
    void refusesAPlanOfNothing() {
        assertThrows(IllegalArgumentException.class, () -> MeasuringPlan.of(MadeUpDevice.AXIS, MadeUpDevice.HOME, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> MeasuringPlan.of(MadeUpDevice.AXIS, MadeUpDevice.HOME, 2, 0));
    }
}
