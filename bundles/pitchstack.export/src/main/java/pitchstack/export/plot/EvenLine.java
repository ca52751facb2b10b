// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.plot;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Makes the points of a line such that XChart draws it well. */
final class EvenLine {
    private EvenLine() {
    }

    /**
     * The points to draw. Dashes begin anew at every point, so those of a dashed line are kept apart. And where points
     * stand evenly, XChart writes the numbers of the axis at them, however odd these are; with one more, on the line
     * between the first two, they do not, and it takes round numbers.
     *
     * @param x rising, at least two
     * @param apart how far points stand apart at least, in points of the picture; 0 for all of them
     * @return x and y
     */
    static double[][] prepared(double[] x, double[] y, double apart, PlotLook look) {
        List<Integer> kept = kept(x, y, apart, look);
        double[][] points = new double[2][kept.size() + 1];
        for (int i = 0; i < kept.size(); i++) {
            points[0][i + 1] = x[kept.get(i)];
            points[1][i + 1] = y[kept.get(i)];
        }
        for (double[] values : points) {
            values[0] = values[1];
            values[1] = values[0] + (values[2] - values[0]) / 3;
        }
        return points;
    }

    private static List<Integer> kept(double[] x, double[] y, double apart, PlotLook look) {
        double perX = look.width() / range(x);
        double perY = look.height() / range(y);
        List<Integer> kept = new ArrayList<>(List.of(0));
        for (int i = 1; i < x.length - 1; i++) {
            int before = kept.get(kept.size() - 1);
            if (Math.hypot((x[i] - x[before]) * perX, (y[i] - y[before]) * perY) >= apart) {
                kept.add(i);
            }
        }
        kept.add(x.length - 1);
        return kept;
    }

    /** From the smallest to the largest, or from 0 where that is farther, as most axes show it. */
    private static double range(double[] values) {
        double low = Math.min(0, Arrays.stream(values).min().orElseThrow());
        double high = Math.max(0, Arrays.stream(values).max().orElseThrow());
        return high > low ? high - low : 1;
    }
}
