// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.evaluation;

import pitchstack.core.stack.Direction;

/**
 * One visit of a target.
 *
 * @param targetM where the carriage was meant to stand
 * @param deviationM reading less target, positive towards higher positions
 * @param direction from which side it was approached: forward came from lower positions
 */
public record Visit(double targetM, double deviationM, Direction direction) {
    /** Checks the numbers. */
    public Visit {
        if (!Double.isFinite(targetM) || !Double.isFinite(deviationM)) {
            throw new IllegalArgumentException("A visit has finite numbers, not " + targetM + " and " + deviationM);
        }
    }
}
