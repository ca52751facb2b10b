// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.teeth;

import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * What many teeth with Gaussian offsets do under a preload, on average: with x = mean + σ·t, F/(N·k·σ) = t·Φ(t) + φ(t), the
 * share Φ(t) of the teeth bears, and x scatters by σ·√V/√N with V = [(t² + 1)Φ + tφ − (tΦ + φ)²]/Φ². The form is that of
 * Greenwood and Williamson (1966) for linear springs. It is for many teeth; at half of them bearing the mean of 20 is about
 * 0.015 σ higher.
 *
 * @param teeth N, independent ones, at least 1; may be an effective number
 * @param stiffnessNPerM k, of one tooth
 * @param scatterM σ, of the offsets; above 0
 */
public record SeatLaw(double teeth, double stiffnessNPerM, double scatterM) {
    private static final NormalDistribution GAUSSIAN = new NormalDistribution();
    private static final int STEPS = 100;
    /** Standard deviations at which no tooth or every tooth bears as good as surely. */
    private static final double FAR = 8;

    /** Checks the numbers. */
    public SeatLaw {
        if (!(teeth >= 1 && stiffnessNPerM > 0 && scatterM > 0)) {
            throw new IllegalArgumentException("Teeth are at least 1, stiffness and scatter above 0, not " + teeth + ", "
                    + stiffnessNPerM + " and " + scatterM);
        }
    }

    /**
     * What a preload does.
     *
     * @param t how far the row stands above the mean offset, in standard deviations of the offsets
     * @param bearingShare which part of the teeth bears, from 0 to 1
     * @param stiffnessNPerM of all that bear
     * @param positionM from the mean offset
     * @param spreadM standard deviation of the position over many rows made alike
     */
    public record Point(double t, double bearingShare, double stiffnessNPerM, double positionM, double spreadM) { }

    /** F/(N·k·σ) at t. */
    public static double normalizedForce(double t) {
        return t * GAUSSIAN.cumulativeProbability(t) + GAUSSIAN.density(t);
    }

    /** √V at t: how much more the position scatters than σ/√N because not all teeth bear. */
    public static double spreadFactor(double t) {
        double share = GAUSSIAN.cumulativeProbability(t);
        double density = GAUSSIAN.density(t);
        double force = t * share + density;
        return Math.sqrt((t * t + 1) * share + t * density - force * force) / share;
    }

    /**
     * The preload at which a part of the teeth bears.
     *
     * @param share above 0 and below 1
     */
    public double preloadN(double share) {
        return teeth * stiffnessNPerM * scatterM * normalizedForce(GAUSSIAN.inverseCumulativeProbability(share));
    }

    /** The preload at which all teeth bear, on average: N·k·σ·E, with E the mean of the highest of N. */
    public double fullBearingN() {
        return teeth * stiffnessNPerM * scatterM * OrderStatistics.meanOfHighest((int) Math.round(teeth));
    }

    /**
     * What a preload does; one below that at t = −8 counts as that.
     *
     * @param preloadN at least 0
     */
    public Point at(double preloadN) {
        double t = inverse(preloadN / (teeth * stiffnessNPerM * scatterM));
        double share = GAUSSIAN.cumulativeProbability(t);
        return new Point(t, share, share * teeth * stiffnessNPerM, t * scatterM,
                scatterM / Math.sqrt(teeth) * spreadFactor(t));
    }

    /** The normalized force rises with t, and from 8 on is t itself. */
    private static double inverse(double force) {
        if (force >= FAR) {
            return force;
        }
        double low = -FAR;
        double high = FAR;
        for (int i = 0; i < STEPS; i++) {
            double middle = (low + high) / 2;
            if (normalizedForce(middle) < force) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
