// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.ArrayList;
import java.util.List;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.ShiftLimit;

/**
 * Between which bounds the shift of some neighbouring stages must stay while they move: a shift limit, or a stop,
 * which bounds the shift of all stages.
 *
 * @param lowest the lowest stage that counts
 * @param highest the highest stage that counts
 * @param low the smallest sum of {@code index · pitch} over them
 * @param high the largest
 */
record ShiftBand(int lowest, int highest, long low, long high) {
    /** Those of an axis that do not depend on where a move starts: its shift limits and the stops of a linear axis. */
    static List<ShiftBand> of(AxisSpec axis) {
        List<ShiftBand> bands = new ArrayList<>();
        for (ShiftLimit limit : axis.shiftLimits()) {
            bands.add(new ShiftBand(limit.lowest(), limit.highest(), -limit.limit(), limit.limit()));
        }
        int last = axis.stages().size() - 1;
        if (axis.scale().turn() == 0) {
            // One band a stop: a start beyond the one must not set the other free.
            axis.low().ifPresent(low -> bands.add(
                    new ShiftBand(0, last, Saturated.subtract(low, axis.datum()), Long.MAX_VALUE)));
            axis.high().ifPresent(high -> bands.add(
                    new ShiftBand(0, last, Long.MIN_VALUE, Saturated.subtract(high, axis.datum()))));
        }
        return bands;
    }

    /** That the place stays in a window. */
    static ShiftBand of(Window window, long datum, int stages) {
        return new ShiftBand(0, stages - 1, window.low() - datum, window.high() - datum);
    }

    boolean concerns(int stage) {
        return lowest <= stage && stage <= highest;
    }

    boolean contains(long shift) {
        return low <= shift && shift <= high;
    }
}
