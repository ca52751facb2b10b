// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * A closed outline of straight lines and arcs of circles, anticlockwise round what it encloses.
 *
 * @param corners at least two; the last goes on to the first
 */
public record Outline(List<Corner> corners) {
    /** Copies the list. */
    public Outline {
        corners = List.copyOf(corners);
    }

    /** The area enclosed in square millimetres, arcs and all: the shoelace formula and a segment of a circle for each arc. */
    public double areaMm2() {
        double twice = 0;
        for (int i = 0; i < corners.size(); i++) {
            Corner a = corners.get(i);
            Corner b = corners.get((i + 1) % corners.size());
            twice += a.x() * b.y() - b.x() * a.y();
            if (a.bulge() != 0) {
                double radius = a.radius(b);
                twice += radius * radius * (a.turn() - Math.sin(a.turn()));
            }
        }
        return twice / 2;
    }

    /**
     * The outline as a polygon.
     *
     * @param sagMm how far a chord may stand off its arc, above 0
     */
    public List<Point> polygon(double sagMm) {
        return flat(corners, true, sagMm);
    }

    /**
     * A way as points.
     *
     * @param way the corners along it
     * @param closed whether its last corner goes on to the first, which is not repeated
     * @param sagMm how far a chord may stand off its arc, above 0
     */
    static List<Point> flat(List<Corner> way, boolean closed, double sagMm) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < way.size(); i++) {
            Corner a = way.get(i);
            points.add(new Point(a.x(), a.y()));
            if (a.bulge() != 0 && (closed || i + 1 < way.size())) {
                addArc(points, a, way.get((i + 1) % way.size()), sagMm);
            }
        }
        return points;
    }

    private static void addArc(List<Point> points, Corner a, Corner b, double sagMm) {
        double radius = a.radius(b);
        double most = 2 * Math.acos(Math.max(0, 1 - sagMm / radius));
        int chords = (int) Math.ceil(Math.abs(a.turn()) / most);
        // From the middle of the chord to the centre, to the left of the way where the arc turns left.
        double off = (1 - a.bulge() * a.bulge()) / (4 * a.bulge());
        double cx = (a.x() + b.x()) / 2 - off * (b.y() - a.y());
        double cy = (a.y() + b.y()) / 2 + off * (b.x() - a.x());
        double start = Math.atan2(a.y() - cy, a.x() - cx);
        for (int k = 1; k < chords; k++) {
            double angle = start + a.turn() * k / chords;
            points.add(new Point(cx + radius * Math.cos(angle), cy + radius * Math.sin(angle)));
        }
    }
}
