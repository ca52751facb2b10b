// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.teeth;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * The highest of N Gaussian numbers of mean 0 and standard deviation 1, by numerical integration of its density
 * N·φ(x)·Φ(x)ᴺ⁻¹. A rigid row rests on its one highest tooth: at −E·σ, with spread S·σ.
 */
public final class OrderStatistics {
    private static final NormalDistribution GAUSSIAN = new NormalDistribution();
    private static final GaussIntegratorFactory RULES = new GaussIntegratorFactory();
    /** The density is smooth, so ten points on each unit of ±10 are good to about twelve digits. */
    private static final int POINTS = 10;
    private static final int FAR = 10;

    private OrderStatistics() {
    }

    /** E: the mean of the highest of so many, at least 1. */
    public static double meanOfHighest(int count) {
        return moment(count, x -> x);
    }

    /** S: the standard deviation of the highest of so many, at least 1. */
    public static double deviationOfHighest(int count) {
        double mean = meanOfHighest(count);
        return Math.sqrt(moment(count, x -> (x - mean) * (x - mean)));
    }

    private static double moment(int count, UnivariateFunction of) {
        if (count < 1) {
            throw new IllegalArgumentException("The highest of " + count);
        }
        double sum = 0;
        for (int unit = -FAR; unit < FAR; unit++) {
            sum += RULES.legendre(POINTS, unit, unit + 1).integrate(x -> of.value(x) * count * GAUSSIAN.density(x)
                    * Math.pow(GAUSSIAN.cumulativeProbability(x), count - 1.0));
        }
        return sum;
    }
}
