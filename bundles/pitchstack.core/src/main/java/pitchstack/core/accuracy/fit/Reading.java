// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.fit;

import pitchstack.core.stack.Direction;
import pitchstack.core.stack.Setting;

/**
 * One measured position.
 *
 * @param setting where the stages stood
 * @param positionM what the instrument showed, corrected by its certificate; on a rotary axis not wrapped, so that it
 *     grows with the indices
 * @param direction from which side it was approached, where that is known
 * @param uncertaintyM standard uncertainty of this reading by itself, above 0; what all readings share goes into
 *     {@link FitOptions#instrumentScale()}
 * @param temperatureC of the positioner
 */
public record Reading(Setting setting, double positionM, Direction direction, double uncertaintyM, double temperatureC) {
    /** Checks the numbers. */
    public Reading {
        if (!Double.isFinite(positionM) || !Double.isFinite(temperatureC)) {
            throw new IllegalArgumentException("A reading has finite numbers, not " + positionM + " and " + temperatureC);
        }
        if (!(uncertaintyM > 0) || Double.isInfinite(uncertaintyM)) {
            throw new IllegalArgumentException("The uncertainty of a reading is above 0, not " + uncertaintyM);
        }
    }
}
