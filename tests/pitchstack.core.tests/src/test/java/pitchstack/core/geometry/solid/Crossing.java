// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry.solid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Looks for triangles that meet other than in a common corner or edge, by trying every two whose boxes meet. Edges against
 * triangles decide it: two triangles that cross have an edge of one that passes through the other; two in one plane
 * that overlap have edges that cross, or a corner of one within the other.
 */
final class Crossing {
    /** A billionth of a cubic millimetre: less is no crossing but rounding. */
    private static final double NOTHING = 1e-9;

    private Crossing() {
    }

    /** Pairs that cross, in words. */
    static List<String> of(Surface surface) {
        List<Node[]> sorted = new ArrayList<>(surface.triangles());
        sorted.sort(Comparator.comparingDouble(Crossing::low));
        List<String> crossings = new ArrayList<>();
        for (int i = 0; i < sorted.size(); i++) {
            for (int j = i + 1; j < sorted.size() && low(sorted.get(j)) <= high(sorted.get(i)); j++) {
                if (boxesMeet(sorted.get(i), sorted.get(j)) && cross(sorted.get(i), sorted.get(j))) {
                    crossings.add(List.of(sorted.get(i)) + " crosses " + List.of(sorted.get(j)));
                }
            }
        }
        return crossings;
    }

    private static double low(Node[] t) {
        return Math.min(t[0].x(), Math.min(t[1].x(), t[2].x()));
    }

    private static double high(Node[] t) {
        return Math.max(t[0].x(), Math.max(t[1].x(), t[2].x()));
    }

    private static boolean boxesMeet(Node[] s, Node[] t) {
        return meet(Stream.of(s).mapToDouble(Node::y).toArray(), Stream.of(t).mapToDouble(Node::y).toArray())
                && meet(Stream.of(s).mapToDouble(Node::z).toArray(), Stream.of(t).mapToDouble(Node::z).toArray());
    }

    private static boolean meet(double[] s, double[] t) {
        return Math.max(s[0], Math.max(s[1], s[2])) >= Math.min(t[0], Math.min(t[1], t[2]))
                && Math.max(t[0], Math.max(t[1], t[2])) >= Math.min(s[0], Math.min(s[1], s[2]));
    }

    private static boolean cross(Node[] s, Node[] t) {
        for (int i = 0; i < 3; i++) {
            if (passes(s[i], s[(i + 1) % 3], t) || passes(t[i], t[(i + 1) % 3], s)) {
                return true;
            }
        }
        return overlap(s, t);
    }

    /** Whether an edge passes through the inside of a triangle, or of its sides; a common corner does not count. */
    private static boolean passes(Node p, Node q, Node[] t) {
        for (Node corner : t) {
            if (corner == p || corner == q) {
                return false;
            }
        }
        double above = volume(t[0], t[1], t[2], p);
        double below = volume(t[0], t[1], t[2], q);
        if (!(above > NOTHING && below < -NOTHING || above < -NOTHING && below > NOTHING)) {
            return false;
        }
        double a = volume(p, q, t[0], t[1]);
        double b = volume(p, q, t[1], t[2]);
        double c = volume(p, q, t[2], t[0]);
        return a >= -NOTHING && b >= -NOTHING && c >= -NOTHING || a <= NOTHING && b <= NOTHING && c <= NOTHING;
    }

    /** Whether two triangles of one plane overlap: neither has a side that parts them. */
    private static boolean overlap(Node[] s, Node[] t) {
        for (Node node : t) {
            if (Math.abs(volume(s[0], s[1], s[2], node)) > NOTHING) {
                return false;
            }
        }
        double[] normal = cross(minus(s[1], s[0]), minus(s[2], s[0]));
        return !parts(s, t, normal) && !parts(t, s, normal);
    }

    private static boolean parts(Node[] s, Node[] t, double[] normal) {
        for (int i = 0; i < 3; i++) {
            double[] side = cross(normal, minus(s[(i + 1) % 3], s[i]));
            double inside = Math.signum(dot(side, minus(s[(i + 2) % 3], s[i])));
            boolean apart = true;
            for (Node node : t) {
                apart &= inside * dot(side, minus(node, s[i])) <= NOTHING;
            }
            if (apart) {
                return true;
            }
        }
        return false;
    }

    /** Six times the volume of a tetrahedron. */
    private static double volume(Node a, Node b, Node c, Node d) {
        return dot(cross(minus(b, a), minus(c, a)), minus(d, a));
    }

    static double[] minus(Node a, Node b) {
        return new double[] {a.x() - b.x(), a.y() - b.y(), a.z() - b.z()};
    }

    static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }
}
