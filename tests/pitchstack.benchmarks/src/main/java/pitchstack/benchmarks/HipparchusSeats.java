// SPDX-License-Identifier: EPL-2.0
package pitchstack.benchmarks;

import java.util.Arrays;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.random.GaussianRandomGenerator;
import org.hipparchus.random.Well19937c;
import org.hipparchus.stat.descriptive.moment.StandardDeviation;
import pitchstack.core.accuracy.teeth.Seating;

/** Rows seated by chance with what a general-purpose library has: its generator, Brent's root finder, its deviation. */
final class HipparchusSeats {
    /** As far as a nanometre, a hundredth of what seats are known to. */
    private static final double ACCURACY_M = 1e-9;
    private static final int MOST_STEPS = 200;

    private final Seating row;
    private final GaussianRandomGenerator gaussian;
    private final BrentSolver solver = new BrentSolver(ACCURACY_M);

    HipparchusSeats(Seating row, long seed) {
        this.row = row;
        gaussian = new GaussianRandomGenerator(new Well19937c(seed));
    }

    /** The standard deviation of the position over so many rows. */
    double spreadM(int draws) {
        double[] positions = new double[draws];
        for (int i = 0; i < draws; i++) {
            positions[i] = (sideM() - sideM()) / 2;
        }
        return new StandardDeviation().evaluate(positions);
    }

    /** Where one side comes to rest: Σ max(0, x − e) = F/k, along the travel. */
    private double sideM() {
        double[] errors = new double[row.teeth()];
        for (int i = 0; i < errors.length; i++) {
            errors[i] = row.scatterM() * gaussian.nextNormalizedDouble();
        }
        double force = row.preloadN() / (2 * Math.sin(row.flankAngleRad()) * row.stiffnessNPerM()
                * Math.cos(row.flankAngleRad()));
        double lowest = Arrays.stream(errors).min().orElseThrow();
        return solver.solve(MOST_STEPS, x -> {
            double sum = -force;
            for (double error : errors) {
                sum += Math.max(0, x - error);
            }
            return sum;
        }, lowest, lowest + force);
    }
}
