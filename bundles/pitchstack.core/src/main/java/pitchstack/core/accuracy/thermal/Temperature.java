// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.thermal;

/**
 * A temperature as it is known.
 *
 * @param celsius the best estimate
 * @param uncertaintyK its standard uncertainty, at least 0
 */
public record Temperature(double celsius, double uncertaintyK) {
    /** The reference temperature of ISO 1. */
    public static final double REFERENCE_C = 20;

    /** Checks the numbers. */
    public Temperature {
        if (!Double.isFinite(celsius) || !(uncertaintyK >= 0) || Double.isInfinite(uncertaintyK)) {
            throw new IllegalArgumentException("A temperature is finite and its uncertainty at least 0, not " + celsius
                    + " and " + uncertaintyK);
        }
    }

    /** How much warmer than the reference. */
    public double overReferenceK() {
        return celsius - REFERENCE_C;
    }
}
