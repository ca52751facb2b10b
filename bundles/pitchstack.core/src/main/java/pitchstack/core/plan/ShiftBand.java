// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.ArrayList;
import java.util.List;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.ShiftLimit;

/**
 * Between which bounds the shift of some neighbouring stages must stay while they move. The stops of an axis are none:
 * one joint of a fine pair alone often carries the carriage past them before the other brings it back.
 *
 * @param lowest the lowest stage that counts
 * @param highest the highest stage that counts
 * @param low the smallest sum of their offsets
 * @param high the largest
 */
record ShiftBand(int lowest, int highest, long low, long high) {
    /** The shift limits of an axis. */
    static List<ShiftBand> of(AxisSpec axis) {
        List<ShiftBand> bands = new ArrayList<>();
        for (ShiftLimit limit : axis.shiftLimits()) {
            bands.add(new ShiftBand(limit.lowest(), limit.highest(), -limit.limit(), limit.limit()));
        }
        return bands;
    }

    boolean concerns(int stage) {
        return lowest <= stage && stage <= highest;
    }

    boolean contains(long shift) {
        return low <= shift && shift <= high;
    }
}
