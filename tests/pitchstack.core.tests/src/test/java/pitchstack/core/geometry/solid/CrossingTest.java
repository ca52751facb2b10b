// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What finds no crossing in a sound solid must find those that are there. */
class CrossingTest {
    /** The triangle (0, 0, 0), (4, 0, 0), (0, 4, 0). */
    private static final double[] FLAT = {0, 0, 0, 4, 0, 0, 0, 4, 0};

    @ParameterizedTest(name = "{1} crossings: {2}")
    @CsvSource(delimiter = '|', value = {
        "1 1 -1  1 1 1  5 5 0 | 1 | passes through its inside",
        "1 1 0  5 1 0  1 5 0 | 1 | overlaps it in its plane",
        "1 1 0  2 1 0  1 2 0 | 1 | lies within it",
        "0 0 1  4 0 1  0 4 1 | 0 | stands over it",
        "5 5 -1  5 5 1  6 6 0 | 0 | passes its plane beside it",
        "4 4 0  4 1 0  1 4 0 | 0 | lies beside it in its plane",
    })
    void twoTrianglesCross(String other, int crossings, String how) {
        Surface surface = new Surface();
        triangle(surface, FLAT);
        triangle(surface, Stream.of(other.strip().split(" +")).mapToDouble(Double::parseDouble).toArray());
        assertEquals(crossings, Crossing.of(surface).size());
    }

    @ParameterizedTest
    @CsvSource({"0, 0, 4", "4, 4, 0"})
    void trianglesWithACommonEdgeDoNotCross(double x, double y, double z) {
        Surface surface = new Surface();
        triangle(surface, FLAT);
        Node third = new Node(3, x, y, z);
        surface.node(third);
        surface.triangle(surface.nodes().get(2), surface.nodes().get(1), third);
        assertEquals(0, Crossing.of(surface).size());
    }

    private static void triangle(Surface surface, double[] at) {
        int first = surface.nodes().size();
        Node[] nodes = new Node[3];
        for (int i = 0; i < nodes.length; i++) {
            nodes[i] = new Node(first + i, at[3 * i], at[3 * i + 1], at[3 * i + 2]);
            surface.node(nodes[i]);
        }
        surface.triangle(nodes[0], nodes[1], nodes[2]);
    }
}
