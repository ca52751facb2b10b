// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.fit;

import java.util.List;

/**
 * By how much a printer makes things larger along one direction, and what it adds to any length.
 *
 * @param scale measured = offset + (1 + scale) · nominal
 * @param offsetM the part that does not grow with length, 0 where a single length was measured
 */
public record PrintScale(Estimate scale, Estimate offsetM) {
    /** Fewer lengths cannot tell an offset from a scale. */
    private static final int LENGTHS_FOR_OFFSET = 2;

    /**
     * The scale of one direction; x and y of a printer are two. With spans of several lengths the offset is fitted with
     * it, otherwise taken as 0, which same-hand flanks make it.
     *
     * @param readings at least one; their uncertainties are taken as they stand
     */
    public static PrintScale of(List<SpanReading> readings) {
        boolean offset = readings.stream().mapToDouble(SpanReading::nominalM).distinct().count() >= LENGTHS_FOR_OFFSET;
        double[][] design = readings.stream()
                .map(r -> offset ? new double[] {r.nominalM(), 1} : new double[] {r.nominalM()}).toArray(double[][]::new);
        LinearFit fit = new LeastSquares(design,
                readings.stream().mapToDouble(r -> 1 / (r.uncertaintyM() * r.uncertaintyM())).toArray())
                .fit(readings.stream().mapToDouble(r -> r.measuredM() - r.nominalM()).toArray());
        return new PrintScale(known(fit, 0), offset ? known(fit, 1) : new Estimate(0, 0, Double.POSITIVE_INFINITY));
    }

    private static Estimate known(LinearFit fit, int column) {
        return new Estimate(fit.coefficients()[column], fit.knownUncertainty(column), Double.POSITIVE_INFINITY);
    }

    /** By what to multiply the drawing in this direction before printing again: 1/(1 + scale). */
    public double factor() {
        return 1 / (1 + scale.value());
    }
}
