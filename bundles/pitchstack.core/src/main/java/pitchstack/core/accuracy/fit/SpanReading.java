// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.fit;

/**
 * A span measured on a printed part, from a flank to another of the same hand, so that thick or thin printing does not
 * count.
 *
 * @param nominalM what the drawing says, above 0
 * @param measuredM what the part has, brought to 20 °C, above 0
 * @param uncertaintyM standard uncertainty of the measurement, above 0
 */
public record SpanReading(double nominalM, double measuredM, double uncertaintyM) {
    /** Checks the numbers. */
    public SpanReading {
        if (!(nominalM > 0) || !(measuredM > 0) || !(uncertaintyM > 0)) {
            throw new IllegalArgumentException("A span and its uncertainty are above 0, not " + nominalM + ", " + measuredM
                    + " and " + uncertaintyM);
        }
    }
}
