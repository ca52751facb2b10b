// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.fit;

import org.hipparchus.linear.RealMatrix;

/**
 * A weighted least-squares fit of y = X·b.
 *
 * @param coefficients b, one a column of the design
 * @param inverse (XᵀWX)⁻¹: the covariance of the coefficients for weights of one over the variance
 * @param residuals y − X·b, one a row of the design
 * @param leverages how much of its own fitted value each observation makes, from 0 to 1
 * @param chiSquare the weighted sum of squared residuals
 * @param freedom rows less columns, at least 0
 */
public record LinearFit(double[] coefficients, RealMatrix inverse, double[] residuals, double[] leverages,
        double chiSquare, int freedom) {
    /** The standard deviation of an observation of weight 1, estimated from the residuals; NaN without freedom. */
    public double residualDeviation() {
        return Math.sqrt(chiSquare / freedom);
    }

    /** The standard uncertainty of a coefficient where the weights are one over the variance. */
    public double knownUncertainty(int column) {
        return Math.sqrt(inverse.getEntry(column, column));
    }

    /** The standard uncertainty of a coefficient with the scatter estimated from the residuals. */
    public double estimatedUncertainty(int column) {
        return residualDeviation() * knownUncertainty(column);
    }

    /** How two coefficients hang together, from −1 to 1. */
    public double correlation(int one, int other) {
        return inverse.getEntry(one, other) / (knownUncertainty(one) * knownUncertainty(other));
    }
}
