// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.fit;

import pitchstack.core.accuracy.budget.Coverage;

/**
 * A fitted number.
 *
 * @param value the best estimate
 * @param uncertainty its standard uncertainty
 * @param degreesOfFreedom effective ones, above 0 or infinite
 */
public record Estimate(double value, double uncertainty, double degreesOfFreedom) {
    /** Half the width of the interval that holds the true number with 95 % probability. */
    public double within() {
        return Coverage.factor(Coverage.USUAL, degreesOfFreedom) * uncertainty;
    }

    /** Whether the interval of 95 % leaves out 0. */
    public boolean isSignificant() {
        return Math.abs(value) > within();
    }
}
