// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.fit;

/**
 * What a fit has to know of a stage.
 *
 * @param title how sentences name it
 * @param pitchM pitch at 20 °C before correction, above 0
 * @param expansionPerK its coefficient of expansion, 0 on a rotary axis
 */
public record StageScale(String title, double pitchM, double expansionPerK) {
    /** The reference temperature of ISO 1. */
    static final double REFERENCE_C = 20;

    /** Checks the numbers. */
    public StageScale {
        if (!(pitchM > 0) || !Double.isFinite(pitchM) || !Double.isFinite(expansionPerK)) {
            throw new IllegalArgumentException(title + ": the pitch is above 0, not " + pitchM);
        }
    }

    /** How far an index moves the body at a temperature, before correction. */
    double lengthM(int index, double temperatureC) {
        return index * pitchM * (1 + expansionPerK * (temperatureC - REFERENCE_C));
    }
}
