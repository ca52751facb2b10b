// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry.solid;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A surface as it was sent, and what can be asked of it. */
final class Surface implements TriangleSink {
    private final List<Node> nodes = new ArrayList<>();
    private final List<Node[]> triangles = new ArrayList<>();

    static Surface of(Solid solid) {
        Surface surface = new Surface();
        solid.send(surface);
        return surface;
    }

    @Override
    public void node(Node node) {
        if (node.index() != nodes.size()) {
            throw new AssertionError("corner " + node.index() + " is the " + nodes.size() + "th");
        }
        nodes.add(node);
    }

    @Override
    public void triangle(Node a, Node b, Node c) {
        for (Node node : List.of(a, b, c)) {
            if (node.index() >= nodes.size() || nodes.get(node.index()) != node) {
                throw new AssertionError(node + " was not sent");
            }
        }
        triangles.add(new Node[] {a, b, c});
    }

    List<Node> nodes() {
        return nodes;
    }

    List<Node[]> triangles() {
        return triangles;
    }

    /** Edges that do not belong to exactly two triangles which run along them in opposite directions. */
    int looseEdges() {
        Map<Long, Integer> runs = new HashMap<>();
        for (Node[] t : triangles) {
            for (int i = 0; i < 3; i++) {
                runs.merge(key(t[i], t[(i + 1) % 3]), 1, Integer::sum);
            }
        }
        return (int) runs.entrySet().stream().filter(e -> e.getValue() != 1
                || runs.getOrDefault(Long.rotateLeft(e.getKey(), 32), 0) != 1).count();
    }

    private static long key(Node a, Node b) {
        return (long) a.index() << 32 | b.index();
    }

    /** Corners less edges plus triangles, an edge for every two sides of triangles. */
    int euler() {
        return nodes.size() - triangles.size() * 3 / 2 + triangles.size();
    }

    /** The volume by the theorem of Gauss: a sixth of the sum of a·(b × c). */
    double volume() {
        double six = 0;
        for (Node[] t : triangles) {
            six += t[0].x() * (t[1].y() * t[2].z() - t[1].z() * t[2].y())
                    + t[0].y() * (t[1].z() * t[2].x() - t[1].x() * t[2].z())
                    + t[0].z() * (t[1].x() * t[2].y() - t[1].y() * t[2].x());
        }
        return six / 6;
    }

    /** The smallest area of a triangle. */
    double smallestArea() {
        return triangles.stream().mapToDouble(t -> area(t[0], t[1], t[2])).min().orElseThrow();
    }

    private static double area(Node a, Node b, Node c) {
        double[] n = Crossing.cross(Crossing.minus(b, a), Crossing.minus(c, a));
        return Math.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]) / 2;
    }
}
