// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.places;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pitchstack.ui.editor.places.Extent;
import pitchstack.ui.editor.places.Hatch;
import pitchstack.ui.editor.places.LabelLane;
import pitchstack.ui.editor.places.ToothShape;

class ToothShapeTest {
    private static final double TAN20 = 0.36397023426620234;

    @ParameterizedTest
    @ValueSource(doubles = {3, 10, 31.4, 240})
    void makesToothAndGapEqualAtHalfDepthSoThatRowsMesh(double pitch) {
        ToothShape shape = new ToothShape(pitch, 20);
        double[] base = shape.corners(true);
        double[] rider = shape.corners(false);
        assertEquals(pitch / 2, (base[2] + base[3]) / 2 - (base[0] + base[1]) / 2, 1e-9);
        // The rider's flank is the base's: its root stands where the base has its tip.
        assertEquals(base[2], rider[0], 1e-9);
        assertEquals(base[3], rider[1], 1e-9);
        assertEquals(base[1] + pitch, rider[3], 1e-9);
        assertEquals(base[0] + pitch, rider[2], 1e-9);
    }

    /** ISO 53: working depth 2 m, pitch π·m, tip land of the working profile π·m/2 − 2·m·tan 20°. */
    @Test
    void drawsTheProportionsOfARackWhereThereIsRoom() {
        double module = 10;
        double[] base = new ToothShape(Math.PI * module, 2 * module).corners(true);
        assertEquals(0.842856 * module, base[2] - base[1], 1e-5 * module);
        assertEquals(20 * TAN20, base[1] - base[0], 1e-9);
    }

    @Test
    void hatchesARectangleAlongTheWholeOfIt() {
        double[] xs = {10, 70, 70, 10};
        double[] ys = {0, 0, 20, 20};
        List<Hatch.Line> lines = new Hatch(6, true).lines(xs, ys, 0);
        // A rising line that meets y = 0 at c is inside for c from 10 to 90: 12, 18, … 90.
        assertEquals(14, lines.stream().filter(line -> Math.abs(line.x1() - line.x2()) > 1e-9).count(), 1);
        for (Hatch.Line line : lines) {
            assertEquals(line.x1() + line.y1(), line.x2() + line.y2(), 1e-9, "45° upwards");
            assertEquals(0, Math.abs((line.x1() + line.y1()) % 6), 1e-9, "on the common lines");
            for (double x : new double[] {line.x1(), line.x2()}) {
                assertTrue(x >= 10 - 1e-9 && x <= 70 + 1e-9);
            }
        }
        for (Hatch.Line line : new Hatch(6, false).lines(xs, ys, 1)) {
            assertEquals(line.x1() - line.y1(), line.x2() - line.y2(), 1e-9, "45° downwards");
            assertEquals(1, ((line.x1() - line.y1()) % 6 + 6) % 6, 1e-9, "through the anchor");
        }
    }

    @Test
    void keepsLabelsApart() {
        LabelLane lane = new LabelLane(new Extent(0, 100), 4);
        assertTrue(lane.take(new Extent(40, 60)));
        assertFalse(lane.take(new Extent(63, 70)), "3 px are too little");
        assertTrue(lane.take(new Extent(64, 70)));
        assertFalse(lane.take(new Extent(95, 101)), "outside");
        assertEquals(OptionalDouble.of(26), lane.takeNear(new Extent(42, 52)), "10 wide, left of 40 with 4 between");
        assertEquals(OptionalDouble.of(74), lane.takeNear(new Extent(65, 80)));
        assertEquals(OptionalDouble.empty(), lane.takeNear(new Extent(50, 75)), "25 wide: 22 are free at the left");
    }
}
