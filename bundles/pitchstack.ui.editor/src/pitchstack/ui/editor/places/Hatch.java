// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.places;

import java.util.ArrayList;
import java.util.List;

/**
 * Parallel lines at 45° inside a convex shape.
 *
 * @param spacingPx the distance of neighbouring lines along the x axis, above 0
 * @param rising whether lines rise to the right
 */
public record Hatch(double spacingPx, boolean rising) {
    /** A piece of a hatch line. */
    public record Line(double x1, double y1, double x2, double y2) { }

    /**
     * The lines. They run through fixed points of the plane, whatever the shape, so that shapes side by side have
     * continuous lines.
     *
     * @param xs the corners' x, in order around the shape
     * @param ys the corners' y, as many
     * @param anchor the x at which one line meets y = 0
     */
    public List<Line> lines(double[] xs, double[] ys, double anchor) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < xs.length; i++) {
            least = Math.min(least, offset(xs[i], ys[i]));
            most = Math.max(most, offset(xs[i], ys[i]));
        }
        List<Line> lines = new ArrayList<>();
        for (double at = anchor + Math.ceil((least - anchor) / spacingPx) * spacingPx; at <= most; at += spacingPx) {
            cut(xs, ys, at, lines);
        }
        return lines;
    }

    /** Which line a point is on, as the x at which that line meets y = 0. */
    private double offset(double x, double y) {
        return rising ? x + y : x - y;
    }

    private void cut(double[] xs, double[] ys, double at, List<Line> lines) {
        double[] hit = new double[4];
        int hits = 0;
        for (int i = 0; i < xs.length && hits < 2; i++) {
            int next = (i + 1) % xs.length;
            double here = offset(xs[i], ys[i]) - at;
            double there = offset(xs[next], ys[next]) - at;
            if (here < 0 != there < 0) {
                double part = here / (here - there);
                hit[2 * hits] = xs[i] + part * (xs[next] - xs[i]);
                hit[2 * hits + 1] = ys[i] + part * (ys[next] - ys[i]);
                hits++;
            }
        }
        if (hits == 2) {
            lines.add(new Line(hit[0], hit[1], hit[2], hit[3]));
        }
    }
}
