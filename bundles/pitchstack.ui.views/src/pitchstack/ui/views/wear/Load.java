// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.wear;

import java.util.ArrayList;
import java.util.List;
import pitchstack.core.coverage.Seatings;
import pitchstack.core.coverage.WearMark.Row;
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
record Load(AxisSpec axis, Setting from, List<Setting> settings, int leftOut, List<RowLoad> rows) {
    /**
     * One row.
     *
     * @param stage the stage, counted from the lowest, 0
     * @param row which row
     * @param counts by tooth, how often it is seated
     */
    record RowLoad(int stage, Row row, int[] counts) {
        int most() {
            int most = 0;
            for (int count : counts) {
                most = Math.max(most, count);
            }
            return most;
        }

        int unused() {
            int unused = 0;
            for (int count : counts) {
                unused += count == 0 ? 1 : 0;
            }
            return unused;
        }

        /** The most used teeth in words: {@code 36 to 47, 60}; empty where none is used. */
        String mostUsed() {
            List<String> runs = new ArrayList<>();
            int most = most();
            for (int tooth = 0; most > 0 && tooth < counts.length; tooth++) {
                int first = tooth;
                while (tooth < counts.length && counts[tooth] == most) {
                    tooth++;
                }
                if (tooth > first) {
                    runs.add(tooth - 1 == first ? "" + first : first + " to " + (tooth - 1));
                }
            }
            return runs.size() <= MOST_RUNS ? String.join(", ", runs)
                    : String.join(", ", runs.subList(0, MOST_RUNS)) + " and others";
        }
    }

    private static final int MOST_RUNS = 3;

    static Load of(AxisSpec axis, Setting from, List<Setting> settings, int leftOut) {
        Seatings seatings = Seatings.ofMoves(axis, from, settings);
        List<RowLoad> rows = new ArrayList<>();
        for (int j = 0; j < axis.stages().size(); j++) {
            rows.add(new RowLoad(j, Row.BASE, seatings.of(j, Row.BASE)));
            rows.add(new RowLoad(j, Row.RIDER, seatings.of(j, Row.RIDER)));
        }
        return new Load(axis, from, List.copyOf(settings), leftOut, rows);
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
    String name(RowLoad one) {
        String stage = axis.stages().get(one.stage()).name();
        return (stage.isBlank() ? "Stage " + (one.stage() + 1) : stage) + (one.row() == Row.BASE ? ", base row" : ", rider row");
    }
}
