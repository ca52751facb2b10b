// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.List;
import pitchstack.model.Axis;
import pitchstack.model.ShiftLimit;

/** Shift limits name stages by their number, from 1 at the bottom; here the numbers follow when stages come and go. */
final class LimitNumbers {
    private LimitNumbers() {
    }

    /** Limits go on naming the stages they named; a stage put in between counts with them. */
    static void makeRoom(Axis axis, int position) {
        int number = position + 1;
        for (ShiftLimit limit : axis.getShiftLimits()) {
            limit.setLowest(limit.getLowest() + (limit.getLowest() >= number ? 1 : 0));
            limit.setHighest(limit.getHighest() + (limit.getHighest() >= number ? 1 : 0));
        }
    }

    /** Limits go on naming the stages that are left; one over the stage alone that leaves goes with it. */
    static void close(Axis axis, int position) {
        for (ShiftLimit limit : List.copyOf(axis.getShiftLimits())) {
            if (isOf(limit, position)) {
                axis.getShiftLimits().remove(limit);
            } else {
                closeIn(limit, position);
            }
        }
    }

    /** Limits over a stage alone go along with it; the others go on naming the stages that they named. */
    static void move(Axis axis, int from, int to) {
        List<ShiftLimit> along = axis.getShiftLimits().stream().filter(limit -> isOf(limit, from)).toList();
        axis.getShiftLimits().stream().filter(limit -> !along.contains(limit)).forEach(limit -> closeIn(limit, from));
        makeRoom(axis, to);
        for (ShiftLimit limit : along) {
            limit.setLowest(to + 1);
            limit.setHighest(to + 1);
        }
    }

    private static boolean isOf(ShiftLimit limit, int position) {
        return limit.getLowest() == position + 1 && limit.getHighest() == position + 1;
    }

    private static void closeIn(ShiftLimit limit, int position) {
        int number = position + 1;
        limit.setLowest(limit.getLowest() - (limit.getLowest() > number ? 1 : 0));
        limit.setHighest(limit.getHighest() - (limit.getHighest() >= number ? 1 : 0));
    }
}
