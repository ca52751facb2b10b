// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.Optional;
import pitchstack.core.check.CurrentBeyondTravel.Overrun;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.StageSpec;

/**
 * The places to which the rows alone would let the carriage go, both included: the sums of datum and offsets, on a rotary
 * axis not brought into one turn.
 *
 * @param lowest the lowest place
 * @param highest the highest place
 */
record RowReach(long lowest, long highest) {
    /** What the rows of an axis allow; the axis must be sound, so that no sum overflows. */
    static RowReach of(AxisSpec axis) {
        long lowest = axis.datum();
        long highest = axis.datum();
        for (StageSpec stage : axis.stages()) {
            lowest += stage.offset(stage.rows().indices().first());
            highest += stage.offset(stage.rows().indices().last());
        }
        return new RowReach(lowest, highest);
    }

    /**
     * How far a position lies beyond the nearer end.
     *
     * @param turn counts in one turn, 0 on a linear axis
     * @param position any position, on a rotary axis within one turn
     */
    Optional<Overrun> overrun(long turn, long position) {
        return turn > 0 ? CurrentBeyondTravel.round(turn, lowest, highest, position)
                : CurrentBeyondTravel.along(lowest, highest, position);
    }
}
