// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.evaluation;

import java.util.List;

/**
 * Mean and spread of the visits of one target from one side.
 *
 * @param meanM x̄
 * @param deviationM s, the estimated standard deviation of one visit
 */
public record Spread(double meanM, double deviationM) {
    /** Of at least two numbers. */
    static Spread of(List<Double> visits) {
        double mean = visits.stream().mapToDouble(x -> x).sum() / visits.size();
        double squares = visits.stream().mapToDouble(x -> (x - mean) * (x - mean)).sum();
        return new Spread(mean, Math.sqrt(squares / (visits.size() - 1)));
    }

    /** x̄ − 2s. */
    public double lowM() {
        return meanM - 2 * deviationM;
    }

    /** x̄ + 2s. */
    public double highM() {
        return meanM + 2 * deviationM;
    }

    /** 4s. */
    public double repeatabilityM() {
        return 4 * deviationM;
    }
}
