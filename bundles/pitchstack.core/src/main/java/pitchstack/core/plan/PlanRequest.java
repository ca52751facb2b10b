// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import pitchstack.core.stack.Setting;

/**
 * What to find.
 *
 * @param target the wanted position, a count of the axis's scale
 * @param tolerance the largest error that counts as reached, itself included; at least 0
 * @param from where the stages stand now; it may be a setting that could not be chosen, such as one over barred teeth
 * @param worn when a setting over worn teeth may be offered
 * @param alternatives how many further settings within tolerance to list after the best; at least 0
 */
public record PlanRequest(long target, long tolerance, Setting from, WornPolicy worn, int alternatives) {
    /** Refuses negative tolerance and count. */
    public PlanRequest {
        if (tolerance < 0 || alternatives < 0) {
            throw new IllegalArgumentException("Tolerance and alternatives must be at least 0, not " + tolerance
                    + " and " + alternatives);
        }
    }
}
