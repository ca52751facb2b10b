// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.budget;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/** Coverage factors: how many standard uncertainties hold the value with a given probability (JCGM 100:2008, G.3). */
public final class Coverage {
    /** The usual one. */
    public static final double USUAL = 0.95;

    /** From here on Student's factors differ from the Gaussian's by less than a millionth, and are hard to compute. */
    private static final double AS_GOOD_AS_INFINITE = 1e7;

    private Coverage() {
    }

    /**
     * The two-sided factor of Student's distribution, of the Gaussian for infinite degrees of freedom.
     *
     * @param confidence between 0 and 1
     * @param degreesOfFreedom above 0, taken as they are; see {@link #truncated}
     */
    public static double factor(double confidence, double degreesOfFreedom) {
        double upper = 0.5 + confidence / 2;
        return degreesOfFreedom > AS_GOOD_AS_INFINITE ? new NormalDistribution().inverseCumulativeProbability(upper)
                : new TDistribution(degreesOfFreedom).inverseCumulativeProbability(upper);
    }

    /** Effective degrees of freedom cut down to a whole number, at least 1 (JCGM 100:2008, G.4.1, note 1). */
    public static double truncated(double degreesOfFreedom) {
        return Double.isInfinite(degreesOfFreedom) ? degreesOfFreedom : Math.max(1, Math.floor(degreesOfFreedom));
    }
}
