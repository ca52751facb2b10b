// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry.solid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

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

    /** A triangle and the box round it, which is asked of it thousands of times. */
    private record Boxed(Node[] corners, double lowX, double highX, double lowY, double highY, double lowZ, double highZ) {
        static Boxed of(Node[] t) {
            return new Boxed(t, least(t[0].x(), t[1].x(), t[2].x()), most(t[0].x(), t[1].x(), t[2].x()),
                    least(t[0].y(), t[1].y(), t[2].y()), most(t[0].y(), t[1].y(), t[2].y()),
                    least(t[0].z(), t[1].z(), t[2].z()), most(t[0].z(), t[1].z(), t[2].z()));
        }

        /** Of boxes that meet along x, whether they meet. */
        boolean meets(Boxed other) {
            return highY >= other.lowY && other.highY >= lowY && highZ >= other.lowZ && other.highZ >= lowZ;
        }

        private static double least(double a, double b, double c) {
            return Math.min(a, Math.min(b, c));
        }

        private static double most(double a, double b, double c) {
            return Math.max(a, Math.max(b, c));
        }
    }

    /** Pairs that cross, in words. */
    static List<String> of(Surface surface) {
        List<Boxed> sorted = surface.triangles().stream().map(Boxed::of).sorted(Comparator.comparingDouble(Boxed::lowX))
                .toList();
        List<String> crossings = new ArrayList<>();
        for (int i = 0; i < sorted.size(); i++) {
            Boxed s = sorted.get(i);
            for (int j = i + 1; j < sorted.size() && sorted.get(j).lowX() <= s.highX(); j++) {
                Boxed t = sorted.get(j);
                if (s.meets(t) && cross(s.corners(), t.corners())) {
                    crossings.add(List.of(s.corners()) + " crosses " + List.of(t.corners()));
                }
            }
        }
        return crossings;
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
