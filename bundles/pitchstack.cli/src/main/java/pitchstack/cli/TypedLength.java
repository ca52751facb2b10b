// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import pitchstack.core.units.QuantityException;
import pitchstack.core.units.Scale;

/** A length or an angle, as typed. */
final class TypedLength {
    private TypedLength() {
    }

    /**
     * A count of a scale.
     *
     * @param option which option it was typed for
     * @throws BadInputException if it cannot be read
     */
    static long read(Scale scale, String option, String text) throws BadInputException {
        try {
            return scale.parse(text);
        } catch (QuantityException e) {
            throw new BadInputException(option + ": " + e.getMessage());
        }
    }
}
