// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pitchstack.core.coverage.Seatings;
import pitchstack.core.coverage.Visits;
import pitchstack.core.coverage.WearMark;
import pitchstack.core.plan.SequenceAnswer.Planned;
import pitchstack.core.plan.SequenceRequest;
import pitchstack.core.plan.StopOrder;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.ToothSpan;

/**
 * How often a planned list seats each tooth.
 *
 * @param axis the axis
 * @param order how the list was planned
 * @param reached how many stops are reached
 * @param leftOut how many are left out
 * @param seatings the counts
 */
record WearLog(AxisSpec axis, StopOrder order, int reached, int leftOut, Seatings seatings) {
    /** Counts the seatings of a plan. */
    static WearLog of(AxisSpec axis, SequenceRequest request, Planned planned) {
        List<Setting> visits = Visits.of(planned, request.order(), request.from());
        return new WearLog(axis, request.order(), planned.legs().size() - planned.leftOut(), planned.leftOut(),
                Seatings.ofMoves(axis, request.from(), visits));
    }

    /**
     * One row of a stage.
     *
     * @param stage the stage, counted from the lowest, 0
     * @param row which of its rows
     * @param counts by tooth, how often it is seated
     */
    record Row(int stage, WearMark.Row row, int[] counts) {
        /** {@code base} or {@code rider}. */
        String name() {
            return row.name().toLowerCase(Locale.ROOT);
        }

        /** The largest count. */
        int most() {
            int most = 0;
            for (int count : counts) {
                most = Math.max(most, count);
            }
            return most;
        }

        /** How many teeth have a count. */
        int teeth(int count) {
            int teeth = 0;
            for (int one : counts) {
                teeth += one == count ? 1 : 0;
            }
            return teeth;
        }

        /** The teeth with a count, as stretches of neighbours. */
        List<ToothSpan> spans(int count) {
            List<ToothSpan> spans = new ArrayList<>();
            int first = -1;
            for (int tooth = 0; tooth <= counts.length; tooth++) {
                boolean has = tooth < counts.length && counts[tooth] == count;
                if (has && first < 0) {
                    first = tooth;
                } else if (!has && first >= 0) {
                    spans.add(new ToothSpan(first, tooth - 1));
                    first = -1;
                }
            }
            return spans;
        }
    }

    /** All rows, lowest stage first, the base row of each before its rider row. */
    List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (int j = 0; j < axis.stages().size(); j++) {
            for (WearMark.Row row : WearMark.Row.values()) {
                rows.add(new Row(j, row, seatings.of(j, row)));
            }
        }
        return rows;
    }
}
