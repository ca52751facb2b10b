// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.wear;

import java.util.List;
import pitchstack.core.coverage.RowSeatings;
import pitchstack.core.coverage.Seatings;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Setting;

/**
 * How often each tooth is seated by one run of a list.
 *
 * @param axis the axis
 * @param from where the stages stand before
 * @param settings the settings of the run, in order
 * @param leftOut how many targets of the list are not reached, or cannot be read
 * @param rows one a row, lowest stage first, base row before rider row
 */
record Load(AxisSpec axis, Setting from, List<Setting> settings, int leftOut, List<RowSeatings> rows) {
    static Load of(AxisSpec axis, Setting from, List<Setting> settings, int leftOut) {
        return new Load(axis, from, List.copyOf(settings), leftOut, Seatings.ofMoves(axis, from, settings).rows());
    }

    /** Which of the rows has most teeth, the first of equals. */
    int longest() {
        int longest = 0;
        for (int i = 1; i < rows.size(); i++) {
            longest = rows.get(i).counts().length > rows.get(longest).counts().length ? i : longest;
        }
        return longest;
    }

    /** What a row is called: {@code Rack, base row}. */
    String name(RowSeatings one) {
        String stage = axis.stages().get(one.stage()).name();
        return (stage.isBlank() ? "Stage " + (one.stage() + 1) : stage) + ", " + one.row().word() + " row";
    }
}
