// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis;

import pitchstack.core.units.LinearScale;
import pitchstack.core.units.QuantityException;

/**
 * Reads lengths of a file in millimetres.
 *
 * @param scale whose unit is meant where none is written
 */
public record Lengths(LinearScale scale) {
    static final double FM_PER_MM = 1e12;

    /** Whether nothing is written. */
    public static boolean isBlank(String text) {
        return text == null || text.isBlank();
    }

    /**
     * A length.
     *
     * @param what what it is, for the sentence
     * @param text as in the file
     * @param otherwise in millimetres, where the text is blank
     * @throws QuantityException if it cannot be read
     */
    public double mm(String what, String text, double otherwise) {
        try {
            return isBlank(text) ? otherwise : scale.parse(text) / FM_PER_MM;
        } catch (QuantityException e) {
            throw new QuantityException("The " + what + " cannot be read: " + e.getMessage());
        }
    }
}
