// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.fit;

/**
 * How to fit.
 *
 * @param scatter where the scatter of the readings comes from
 * @param instrumentScale relative standard uncertainty of the instrument's own scale, which all readings share and no
 *     number of readings makes smaller; at least 0
 */
public record FitOptions(Scatter scatter, double instrumentScale) {
    /** Scatter from the residuals, and an instrument without a scale error. */
    public static final FitOptions USUAL = new FitOptions(Scatter.FROM_RESIDUALS, 0);

    /** Where the scatter of the readings comes from. */
    public enum Scatter {
        /** The uncertainties of the readings are only in the right proportion; how large they are the residuals say. */
        FROM_RESIDUALS,
        /**
         * As from the residuals, but repeats of a setting share an error that comes back, as its teeth make, so that only
         * the means of settings tell how large the scatter of a pitch is. Where there are too few settings for that, as
         * from the residuals.
         */
        BETWEEN_SETTINGS,
        /** The uncertainties of the readings are right as they stand. */
        AS_STATED
    }

    /** Checks the number. */
    public FitOptions {
        if (!(instrumentScale >= 0) || Double.isInfinite(instrumentScale)) {
            throw new IllegalArgumentException("The uncertainty of a scale is at least 0, not " + instrumentScale);
        }
    }
}
