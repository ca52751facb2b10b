// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.util.ArrayList;
import java.util.List;

/** Lines at 45° across a cut face (ISO 128). */
final class Hatching {
    private static final double ROOT_HALF = Math.sqrt(0.5);

    private Hatching() {
    }

    /**
     * The lines.
     *
     * @param face the corners of the face in order, straight between them
     * @param spacingMm from line to line
     */
    static List<Mark> of(List<Point> face, double spacingMm) {
        List<Mark> lines = new ArrayList<>();
        double least = face.stream().mapToDouble(Hatching::across).min().orElseThrow();
        double most = face.stream().mapToDouble(Hatching::across).max().orElseThrow();
        for (int i = (int) Math.ceil(least / spacingMm); i * spacingMm < most; i++) {
            double[] cuts = cuts(face, i * spacingMm);
            for (int k = 0; k + 1 < cuts.length; k += 2) {
                lines.add(new Mark.Line(Pen.HATCH, point(cuts[k], i * spacingMm), point(cuts[k + 1], i * spacingMm)));
            }
        }
        return lines;
    }

    /** Where a line meets the edges of the face, along it. An edge holds its lower end and not its upper one. */
    private static double[] cuts(List<Point> face, double across) {
        List<Double> cuts = new ArrayList<>();
        for (int i = 0; i < face.size(); i++) {
            Point a = face.get(i);
            Point b = face.get((i + 1) % face.size());
            if (across(a) <= across != across(b) <= across) {
                double share = (across - across(a)) / (across(b) - across(a));
                cuts.add(along(a) + share * (along(b) - along(a)));
            }
        }
        return cuts.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    }

    private static double along(Point point) {
        return (point.x() + point.y()) * ROOT_HALF;
    }

    private static double across(Point point) {
        return (point.y() - point.x()) * ROOT_HALF;
    }

    private static Point point(double along, double across) {
        return new Point((along - across) * ROOT_HALF, (along + across) * ROOT_HALF);
    }
}
