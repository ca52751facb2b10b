// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import pitchstack.core.coverage.WearMark.Row;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.RowSpec;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.Source;
import pitchstack.core.stack.StageSpec;

final class SeatingsTest {
    /** Riders of 3 teeth on bases of 6, the first over base tooth 1 and 0 at index 0, one tooth engaged at least. */
    private static final AxisSpec AXIS = KnownStacks.axis(List.of(stage(1), stage(0)), OptionalLong.empty(),
            OptionalLong.empty(), List.of());
    private static final List<Setting> SETTINGS = List.of(Setting.of(0, 0), Setting.of(0, 5), Setting.of(-3, 5));

    private static StageSpec stage(int start) {
        return new StageSpec("", Source.PRINTED, 1000, 1000,
                new RowPair(new RowSpec(6, List.of()), new RowSpec(3, List.of()), start, 1), new EffortCost(0, 0));
    }

    @Test
    void countEveryToothEngagedInEverySetting() {
        Seatings seatings = Seatings.ofAll(AXIS, SETTINGS);
        // Twice over base teeth 1 to 3; at index −3 only the rider's last tooth meets the base's first.
        assertArrayEquals(new int[] {1, 2, 2, 2, 0, 0}, seatings.of(0, Row.BASE));
        assertArrayEquals(new int[] {2, 2, 3}, seatings.of(0, Row.RIDER));
        // Once over base teeth 0 to 2; twice at index 5 only the rider's first tooth meets the base's last.
        assertArrayEquals(new int[] {1, 1, 1, 0, 0, 2}, seatings.of(1, Row.BASE));
        assertArrayEquals(new int[] {3, 1, 1}, seatings.of(1, Row.RIDER));
    }

    @Test
    void countOnlyStagesThatMoveWhereAsked() {
        Seatings seatings = Seatings.ofMoves(AXIS, Setting.of(0, 1), SETTINGS);
        assertArrayEquals(new int[] {1, 0, 0, 0, 0, 0}, seatings.of(0, Row.BASE));
        assertArrayEquals(new int[] {1, 1, 1, 0, 0, 1}, seatings.of(1, Row.BASE));
        assertArrayEquals(new int[] {2, 1, 1}, seatings.of(1, Row.RIDER));
    }

    @Test
    void namesTheMostUsedTeethAsStretchesOfNeighbours() {
        RowSeatings row = new RowSeatings(0, WearMark.Row.BASE, new int[] {2, 0, 2, 2, 1, 2});
        assertEquals("0, 2 to 3, 5", row.mostUsed(3));
        assertEquals("0, 2 to 3 and others", row.mostUsed(2));
        assertEquals(4, row.teeth(2));
        assertEquals("", new RowSeatings(0, WearMark.Row.BASE, new int[] {0, 0}).mostUsed(3));
    }
}
