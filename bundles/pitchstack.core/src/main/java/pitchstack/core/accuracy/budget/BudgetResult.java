// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.budget;

import java.util.List;

/**
 * What a budget comes to. All uncertainties are in the unit of the result.
 *
 * @param lines the contributions with their shares, in the order of the budget
 * @param combined the combined standard uncertainty u
 * @param repeating the part of it that comes back each time
 * @param varying the part that does not; combined² = repeating² + varying²
 * @param degreesOfFreedom effective ones, not truncated
 * @param confidence of the expanded uncertainty
 * @param factor the coverage factor k, of the truncated degrees of freedom
 */
public record BudgetResult(List<Line> lines, double combined, double repeating, double varying, double degreesOfFreedom,
        double confidence, double factor) {
    /**
     * One contribution.
     *
     * @param contribution as it went in
     * @param share its part of the combined variance; all add up to 1. With correlation a share can be below 0, where
     *     the contribution takes away from what others add.
     */
    public record Line(Contribution contribution, double share) { }

    /** Copies the list. */
    public BudgetResult {
        lines = List.copyOf(lines);
    }

    /** The expanded uncertainty U = k·u. */
    public double expanded() {
        return factor * combined;
    }
}
