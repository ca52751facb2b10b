// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry.solid;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pitchstack.core.geometry.Point;

/**
 * Takes triangles without area out of a cut-up polygon. Where three corners lie on one line, the cut may leave a triangle
 * of them; its longest side then belongs to a neighbour, and both together are cut the other way.
 */
final class FlatTriangles {
    /** Twice the area, in square millimetres, of a triangle that is nothing but rounding. */
    private static final double NOTHING = 1e-9;

    private record Edge(Point from, Point to) { }

    private final List<Point[]> triangles;
    private final Map<Edge, Integer> owners = new HashMap<>();
    private final Deque<Integer> flat = new ArrayDeque<>();

    private FlatTriangles(List<Point[]> triangles) {
        this.triangles = triangles;
    }

    /** Changes the list in place; the corners and the outline stay the same. */
    static void mend(List<Point[]> triangles) {
        FlatTriangles mender = new FlatTriangles(triangles);
        for (int i = 0; i < triangles.size(); i++) {
            mender.enter(i);
        }
        // Every turn gives one flat triangle an area or passes it on along the line; more turns than triangles find none.
        for (int turns = triangles.size() * 2; turns > 0 && !mender.flat.isEmpty(); turns--) {
            mender.turn(mender.flat.remove());
        }
    }

    private void enter(int triangle) {
        Point[] t = triangles.get(triangle);
        for (int k = 0; k < t.length; k++) {
            owners.put(new Edge(t[k], t[(k + 1) % t.length]), triangle);
        }
        if (isFlat(t) && !flat.contains(triangle)) {
            flat.add(triangle);
        }
    }

    private void turn(int triangle) {
        Point[] t = triangles.get(triangle);
        int k = longest(t);
        Point a = t[k];
        Point c = t[(k + 1) % t.length];
        Point between = t[(k + 2) % t.length];
        Integer other = owners.get(new Edge(c, a));
        if (!isFlat(t) || other == null) {
            return;
        }
        Point across = opposite(triangles.get(other), c, a);
        triangles.set(triangle, new Point[] {between, a, across});
        triangles.set(other, new Point[] {c, between, across});
        owners.remove(new Edge(a, c));
        owners.remove(new Edge(c, a));
        enter(triangle);
        enter(other);
    }

    private static Point opposite(Point[] t, Point a, Point b) {
        for (Point point : t) {
            if (!point.equals(a) && !point.equals(b)) {
                return point;
            }
        }
        throw new IllegalStateException("A triangle has only two corners");
    }

    private static int longest(Point[] t) {
        int longest = 0;
        for (int k = 1; k < t.length; k++) {
            longest = length(t, k) > length(t, longest) ? k : longest;
        }
        return longest;
    }

    private static double length(Point[] t, int side) {
        Point a = t[side];
        Point b = t[(side + 1) % t.length];
        return Math.hypot(b.x() - a.x(), b.y() - a.y());
    }

    private static boolean isFlat(Point[] t) {
        return Math.abs((t[1].x() - t[0].x()) * (t[2].y() - t[0].y()) - (t[2].x() - t[0].x()) * (t[1].y() - t[0].y()))
                < NOTHING;
    }
}
