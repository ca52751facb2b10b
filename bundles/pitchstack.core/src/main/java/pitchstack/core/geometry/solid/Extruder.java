// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry.solid;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import pitchstack.core.geometry.Point;

/** Sends the surface of what stands on a side view, one piece of the view after the other. */
final class Extruder {
    private final TriangleSink sink;
    private final Placement placement;
    private final double heightMm;
    private final double depthMm;
    private int sent;

    /**
     * @param heightMm across the face
     * @param depthMm of what is engraved
     */
    Extruder(TriangleSink sink, Placement placement, double heightMm, double depthMm) {
        this.sink = sink;
        this.placement = placement;
        this.heightMm = heightMm;
        this.depthMm = depthMm;
    }

    /** Corners over a point: on the bed and on the face above. */
    Column column(Point at) {
        return new Column(List.of(node(at, 0, 0), node(at, 0, heightMm)));
    }

    /** Corners over a point, of which that half way up stands ahead along x. */
    Column leaning(Point at, double aheadMm) {
        return new Column(List.of(node(at, 0, 0), node(at, aheadMm, heightMm / 2), node(at, 0, heightMm)));
    }

    private Column sunk(Point at) {
        return new Column(List.of(node(at, 0, heightMm - depthMm), node(at, 0, heightMm)));
    }

    private Node node(Point at, double ahead, double z) {
        Point moved = new Point(at.x() + ahead, at.y());
        Node node = new Node(sent++, placement.x(moved), placement.y(moved), z);
        sink.node(node);
        return node;
    }

    /**
     * Sends one piece.
     *
     * @param rim its outline, anticlockwise
     * @param columns those over the rim
     * @param open whether the way from a corner of the rim to the next is no wall, since another piece goes on there
     * @param holes outlines of holes, clockwise
     * @param pockets what is engraved
     */
    void piece(List<Point> rim, List<Column> columns, boolean[] open, List<List<Point>> holes, List<Pocket> pockets) {
        Map<Point, Column> over = new HashMap<>();
        for (int i = 0; i < rim.size(); i++) {
            over.put(rim.get(i), columns.get(i));
            if (!open[i]) {
                wall(columns.get(i), columns.get((i + 1) % rim.size()));
            }
        }
        holes.forEach(hole -> ring(hole, this::column, over));
        List<Point[]> low = Triangulation.of(rim, holes);
        face(low, over, Column::low, false);
        List<List<Point>> cut = new ArrayList<>(holes);
        for (Pocket pocket : pockets) {
            cut.add(Rings.reversed(pocket.rim()));
            engrave(pocket, over);
        }
        face(pockets.isEmpty() ? low : Triangulation.of(rim, cut), over, Column::high, true);
    }

    private void engrave(Pocket pocket, Map<Point, Column> over) {
        ring(Rings.reversed(pocket.rim()), this::sunk, over);
        for (List<Point> island : pocket.islands()) {
            List<Point> standing = Rings.reversed(island);
            ring(standing, this::sunk, over);
            face(Triangulation.of(standing, List.of()), over, Column::high, true);
        }
        face(Triangulation.of(pocket.rim(), pocket.islands()), over, Column::low, true);
    }

    /** The walls round a ring that has the material on its left. */
    private void ring(List<Point> ring, Function<Point, Column> make, Map<Point, Column> over) {
        List<Column> columns = ring.stream().map(make).toList();
        for (int i = 0; i < ring.size(); i++) {
            over.put(ring.get(i), columns.get(i));
            wall(columns.get(i), columns.get((i + 1) % ring.size()));
        }
    }

    private void face(List<Point[]> triangles, Map<Point, Column> over, Function<Column, Node> level, boolean up) {
        for (Point[] t : triangles) {
            Node a = level.apply(over.get(t[0]));
            Node b = level.apply(over.get(t[1]));
            Node c = level.apply(over.get(t[2]));
            triangle(a, up ? b : c, up ? c : b);
        }
    }

    /** The wall between two columns, seen from outside with the first on the left. */
    private void wall(Column left, Column right) {
        int i = 0;
        int j = 0;
        while (i + 1 < left.nodes().size() || j + 1 < right.nodes().size()) {
            Node a = left.nodes().get(i);
            Node b = right.nodes().get(j);
            boolean climbRight = i + 1 == left.nodes().size() || j + 1 < right.nodes().size()
                    && right.nodes().get(j + 1).z() <= left.nodes().get(i + 1).z();
            triangle(a, b, climbRight ? right.nodes().get(++j) : left.nodes().get(++i));
        }
    }

    private void triangle(Node a, Node b, Node c) {
        if (placement.mirrored()) {
            sink.triangle(a, c, b);
        } else {
            sink.triangle(a, b, c);
        }
    }
}
