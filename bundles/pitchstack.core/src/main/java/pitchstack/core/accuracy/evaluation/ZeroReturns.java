// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.evaluation;

import java.util.List;
import org.hipparchus.distribution.continuous.GammaDistribution;
import pitchstack.core.accuracy.budget.Coverage;

/**
 * How well the carriage comes back: the same setting visited again and again, all stages released in between.
 *
 * @param count how many returns were read, at least 3
 * @param meanM their mean
 * @param deviationM s, the estimated standard deviation of one return
 * @param largestM the largest amount of any reading
 * @param slopeM the straight trend from one return to the next, positive towards higher positions
 * @param slopeUncertaintyM its standard uncertainty
 */
public record ZeroReturns(int count, double meanM, double deviationM, double largestM, double slopeM,
        double slopeUncertaintyM) {
    /** Fewer leave no degree of freedom beside a trend. */
    private static final int FEWEST = 3;

    /**
     * Evaluates returns.
     *
     * @param readingsM in the order they were read, at least 3
     * @throws IllegalArgumentException if there are fewer
     */
    public static ZeroReturns of(List<Double> readingsM) {
        int n = readingsM.size();
        if (n < FEWEST) {
            throw new IllegalArgumentException("A test of returns needs at least " + FEWEST + " readings, not " + n);
        }
        Spread spread = Spread.of(readingsM);
        double middle = (n - 1) / 2.0;
        double times = n * ((double) n * n - 1) / 12;
        double slope = 0;
        for (int i = 0; i < n; i++) {
            slope += (i - middle) * readingsM.get(i) / times;
        }
        double left = (n - 1) * spread.deviationM() * spread.deviationM() - slope * slope * times;
        double largest = readingsM.stream().mapToDouble(Math::abs).max().orElseThrow();
        return new ZeroReturns(n, spread.meanM(), spread.deviationM(), largest, slope,
                Math.sqrt(Math.max(0, left) / (n - 2) / times));
    }

    /** Half the width around the mean that holds the next return with 95 % probability: t·s·√(1 + 1/n). */
    public double nextWithinM() {
        return Coverage.factor(Coverage.USUAL, count - 1) * deviationM * Math.sqrt(1 + 1.0 / count);
    }

    /** The standard deviation below which the true one lies with 95 % confidence: s·√((n − 1)/χ²₀.₀₅). */
    public double deviationBelowM() {
        // χ² with ν degrees of freedom is the gamma distribution of shape ν/2 and scale 2.
        double chiSquare = new GammaDistribution((count - 1) / 2.0, 2).inverseCumulativeProbability(1 - Coverage.USUAL);
        return deviationM * Math.sqrt((count - 1) / chiSquare);
    }

    /** Whether the returns wander off one way more than chance explains, at 95 %: warming up, settling, creep. */
    public boolean drifts() {
        return Math.abs(slopeM) > Coverage.factor(Coverage.USUAL, count - 2) * slopeUncertaintyM;
    }
}
