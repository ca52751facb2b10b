// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import pitchstack.core.stack.Directions;
import pitchstack.core.stack.Setting;

/**
 * What to find.
 *
 * @param target the wanted position, a count of the axis's scale; for a relative move see
 *     {@link pitchstack.core.stack.AxisSpec#positionFrom}
 * @param tolerance the largest error that counts as reached, itself included; at least 0
 * @param from where the stages stand now; it may be a setting that could not be chosen, such as one over barred teeth
 * @param last which way each stage moved last, for what turning round costs
 * @param worn when a setting over worn teeth may be offered
 * @param alternatives how many further settings within tolerance to list after the best; at least 0
 */
public record PlanRequest(long target, long tolerance, Setting from, Directions last, WornPolicy worn, int alternatives) {
    /** Refuses negative tolerance and count, and directions of another number of stages. */
    public PlanRequest {
        if (tolerance < 0 || alternatives < 0) {
            throw new IllegalArgumentException("Tolerance and alternatives must be at least 0, not " + tolerance
                    + " and " + alternatives);
        }
        if (from.size() != last.size()) {
            throw new IllegalArgumentException("The starting setting has " + from.size() + " indices, but "
                    + last.size() + " directions");
        }
    }

    /** A request without knowledge of which way the stages moved last. */
    public PlanRequest(long target, long tolerance, Setting from, WornPolicy worn, int alternatives) {
        this(target, tolerance, from, Directions.unknown(from.size()), worn, alternatives);
    }
}
