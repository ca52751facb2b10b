// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry;

/**
 * A corner of an outline and the way from it to the next.
 *
 * @param x millimetres
 * @param y millimetres
 * @param bulge 0 where the way is straight, else the tangent of a quarter of the angle of the arc, above 0 where it turns
 *     anticlockwise
 */
public record Corner(double x, double y, double bulge) {
    /** Nearer than this, in millimetres, two corners are one. */
    private static final double SAME = 1e-9;

    /** A corner from which it goes on straight. */
    public Corner(double x, double y) {
        this(x, y, 0);
    }

    /** The corner moved. */
    public Corner shifted(double dx, double dy) {
        return new Corner(x + dx, y + dy, bulge);
    }

    /** The corner in a mirror that lies along x. */
    public Corner mirrored() {
        return new Corner(x, -y, -bulge);
    }

    /** Whether both stand on the same spot. */
    boolean isAt(Corner other) {
        return Math.hypot(x - other.x, y - other.y) < SAME;
    }

    /** The angle through which the way to the next corner turns, anticlockwise above 0. */
    double turn() {
        return 4 * Math.atan(bulge);
    }

    /** The radius of the arc to the next corner. */
    double radius(Corner next) {
        return Math.hypot(next.x - x, next.y - y) * (1 + bulge * bulge) / (4 * Math.abs(bulge));
    }
}
