// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry;

import java.util.ArrayList;
import java.util.List;

/** Builds a way from straight lines whose corners are rounded off. */
final class RoundedWay {
    private record Bend(double x, double y, double radius) { }

    private final List<Bend> bends = new ArrayList<>();

    /** Goes on to a point with a sharp corner. */
    RoundedWay to(double x, double y) {
        return to(x, y, 0);
    }

    /** Goes on to a point that is rounded off with a radius. */
    RoundedWay to(double x, double y, double radius) {
        bends.add(new Bend(x, y, radius));
        return this;
    }

    /** The corners of the way between its ends, where roundings begin and end; those that coincide are one. */
    List<Corner> corners() {
        List<Corner> corners = new ArrayList<>();
        for (int i = 1; i + 1 < bends.size(); i++) {
            add(corners, bends.get(i - 1), bends.get(i), bends.get(i + 1));
        }
        return corners;
    }

    private static void add(List<Corner> corners, Bend from, Bend at, Bend to) {
        double in = Math.atan2(at.y - from.y, at.x - from.x);
        double out = Math.atan2(to.y - at.y, to.x - at.x);
        double turn = Math.IEEEremainder(out - in, 2 * Math.PI);
        if (at.radius == 0 || turn == 0) {
            append(corners, new Corner(at.x, at.y));
            return;
        }
        double reach = at.radius * Math.tan(Math.abs(turn) / 2);
        append(corners, new Corner(at.x - reach * Math.cos(in), at.y - reach * Math.sin(in), Math.tan(turn / 4)));
        append(corners, new Corner(at.x + reach * Math.cos(out), at.y + reach * Math.sin(out)));
    }

    /** Adds a corner; one that stands where the last one does takes its place. */
    static void append(List<Corner> corners, Corner corner) {
        int last = corners.size() - 1;
        if (last >= 0 && corners.get(last).isAt(corner)) {
            corners.set(last, corner);
        } else {
            corners.add(corner);
        }
    }
}
