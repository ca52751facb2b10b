// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.teeth;

import java.util.function.IntToDoubleFunction;

/**
 * How many independent teeth average as well as these, whose errors hang together along the print: the variance of their
 * mean is σ²/N_eff with N_eff = N/(1 + 2·Σ (1 − j/N)·ρⱼ), ρⱼ the correlation of teeth j apart.
 */
public final class EffectiveTeeth {
    private EffectiveTeeth() {
    }

    /**
     * For any correlation.
     *
     * @param teeth N, at least 1
     * @param correlation ρ by distance in teeth, from 1 to N − 1
     * @throws IllegalArgumentException if no errors can hang together in this way
     */
    public static double of(int teeth, IntToDoubleFunction correlation) {
        double sum = 1;
        for (int j = 1; j < teeth; j++) {
            sum += 2 * (1 - (double) j / teeth) * correlation.applyAsDouble(j);
        }
        if (!(sum > 0)) {
            throw new IllegalArgumentException("No errors hang together in this way: their mean would have the variance "
                    + sum + " σ²/N");
        }
        return teeth / sum;
    }

    /** For errors that forget each other by the same part from tooth to tooth: ρⱼ = ρʲ, ρ from 0 to 1. */
    public static double fading(int teeth, double neighbours) {
        return of(teeth, j -> Math.pow(neighbours, j));
    }
}
