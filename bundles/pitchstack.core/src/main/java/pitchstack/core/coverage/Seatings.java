// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.ToothSpan;

/** How often each tooth is seated by a list of settings, so that wear can be foreseen. Never changed. */
public final class Seatings {
    private final List<int[]> base = new ArrayList<>();
    private final List<int[]> rider = new ArrayList<>();

    private Seatings(AxisSpec axis, Optional<Setting> from, List<Setting> settings) {
        for (int j = 0; j < axis.stages().size(); j++) {
            RowPair rows = axis.stages().get(j).rows();
            // The change of the count from each tooth to the next.
            int[] onBase = new int[rows.base().teeth() + 1];
            int[] onRider = new int[rows.rider().teeth() + 1];
            Optional<Setting> before = from;
            for (Setting setting : settings) {
                if (before.isEmpty() || before.get().index(j) != setting.index(j)) {
                    add(onBase, rows.engagedBase(setting.index(j)));
                    add(onRider, rows.engagedRider(setting.index(j)));
                }
                before = from.map(start -> setting);
            }
            base.add(sums(onBase));
            rider.add(sums(onRider));
        }
    }

    /** Counts the engaged teeth of every setting, those of a stage that stays from one to the next each time anew. */
    public static Seatings ofAll(AxisSpec axis, List<Setting> settings) {
        return new Seatings(axis, Optional.empty(), settings);
    }

    /**
     * Counts only where teeth come together: at each setting those of the stages that move to it.
     *
     * @param from where the stages stand before the first setting
     */
    public static Seatings ofMoves(AxisSpec axis, Setting from, List<Setting> settings) {
        return new Seatings(axis, Optional.of(from), settings);
    }

    private static void add(int[] changes, ToothSpan engaged) {
        if (!engaged.isEmpty()) {
            changes[engaged.first()]++;
            changes[engaged.last() + 1]--;
        }
    }

    private static int[] sums(int[] changes) {
        int[] sums = new int[changes.length - 1];
        int sum = 0;
        for (int tooth = 0; tooth < sums.length; tooth++) {
            sum += changes[tooth];
            sums[tooth] = sum;
        }
        return sums;
    }

    /** All rows, lowest stage first, the base row of each before its rider row. */
    public List<RowSeatings> rows() {
        List<RowSeatings> rows = new ArrayList<>();
        for (int j = 0; j < base.size(); j++) {
            for (WearMark.Row row : WearMark.Row.values()) {
                rows.add(new RowSeatings(j, row, of(j, row)));
            }
        }
        return rows;
    }

    /** By tooth of a row, how often it was seated: a copy. */
    public int[] of(int stage, WearMark.Row row) {
        return (row == WearMark.Row.BASE ? base : rider).get(stage).clone();
    }
}
