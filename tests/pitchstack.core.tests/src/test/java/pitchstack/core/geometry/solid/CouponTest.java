// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class CouponTest {
    private final Surface surface = Surface.of(new Coupon());

    @Test
    void isASoundSolidOfTheVolumeOfItsBlocks() {
        assertEquals(0, surface.looseEdges());
        assertEquals(2, surface.euler());
        assertEquals(List.of(), Crossing.of(surface));
        assertEquals(new Coupon().volumeMm3(), surface.volume(), 1e-9);
        // Two arms of 106 × 8 mm that share a corner, eight posts of 6 × 6 mm, all 6 mm high; marks take away little.
        assertEquals((2 * 106 * 8 - 64 + 8 * 36) * 6, surface.volume(), 25);
    }

    @Test
    void postsStandWhereTheMeasuringPlanSaysAlongBothArms() {
        assertEquals(faces(Node::x, Node::y), faces(Node::y, Node::x));
        // Both faces of every post, from the corner of the arms.
        assertEquals(new TreeSet<>(List.of(0.0, 6.0, 20.0, 26.0, 50.0, 56.0, 100.0, 106.0)), faces(Node::x, Node::y));
    }

    private TreeSet<Double> faces(ToDoubleFunction<Node> along, ToDoubleFunction<Node> across) {
        return surface.nodes().stream().filter(n -> across.applyAsDouble(n) == 0)
                .map(n -> along.applyAsDouble(n) - 6).collect(Collectors.toCollection(TreeSet::new));
    }
}
