// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.places;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import pitchstack.ui.editor.places.Extent;
import pitchstack.ui.editor.places.LabelLane;

/** Labels 40 wide on a line from 0 to 200, at least 6 apart, that name narrow marks. */
class LabelLaneTest {
    private final LabelLane lane = new LabelLane(new Extent(0, 200), 6);

    private OptionalDouble name(double from, double to, Extent... others) {
        double left = (from + to) / 2 - 20;
        return lane.takeAt(new Extent(left, left + 40), new Extent(from, to), List.of(others));
    }

    @Test
    void standAtWhatTheyName() {
        assertEquals(OptionalDouble.of(80), name(98, 102));
    }

    @Test
    void makeWayForAMarkBesideWithoutLeavingTheirOwn() {
        assertEquals(OptionalDouble.of(70), name(98, 102, new Extent(110, 114)));
        assertEquals(OptionalDouble.of(116), name(110, 114, new Extent(98, 102)), "6 right of the label that ends at 110");
    }

    @Test
    void areDroppedWhereOnlyAnotherMarkIsNear() {
        assertTrue(name(98, 102, new Extent(90, 94), new Extent(106, 110)).isEmpty());
        lane.take(new Extent(60, 140));
        assertTrue(name(98, 102).isEmpty(), "the nearest room is at another place");
    }
}
