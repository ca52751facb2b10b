// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.List;
import java.util.function.IntPredicate;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.Wear;

/**
 * What shifting a base row under its rider does to the wear of the row: the same settings then stand over other teeth.
 * The list is run once before the shift and once after it, and compared with two runs without one.
 *
 * @param stage the stage whose base row is shifted, counted from the lowest, 0
 * @param teeth by how many teeth the start tooth of the stage is raised; below 0 it is lowered
 * @param unshifted the seatings of the most used tooth after two runs without a shift
 * @param shifted the seatings of the most used tooth after one run before the shift and one after it
 * @param beyond at how many of the settings too few teeth would be engaged after the shift
 * @param worn at how many the stage would stand over worn teeth
 * @param barred at how many over barred ones
 */
public record RackShift(int stage, int teeth, int unshifted, int shifted, int beyond, int worn, int barred) {
    /**
     * Works it out.
     *
     * @param axis the axis
     * @param stage the stage whose base row is shifted
     * @param teeth by how many teeth
     * @param from where the stages stand before the first setting
     * @param settings the settings of one run
     */
    public static RackShift of(AxisSpec axis, int stage, int teeth, Setting from, List<Setting> settings) {
        RowPair rows = axis.stages().get(stage).rows();
        RowPair moved = new RowPair(rows.base(), rows.rider(), rows.start() + teeth, rows.minimumEngaged());
        AxisSpec shifted = axis.withStage(stage, axis.stages().get(stage).withRows(moved));
        int[] before = Seatings.ofMoves(axis, from, settings).of(stage, WearMark.Row.BASE);
        int[] after = Seatings.ofMoves(shifted, from, settings).of(stage, WearMark.Row.BASE);
        int most = 0;
        int spread = 0;
        for (int tooth = 0; tooth < before.length; tooth++) {
            most = Math.max(most, 2 * before[tooth]);
            spread = Math.max(spread, before[tooth] + after[tooth]);
        }
        IndexRange range = moved.indices();
        return new RackShift(stage, teeth, most, spread, count(settings, stage, n -> !range.contains(n)),
                count(settings, stage, n -> range.contains(n) && moved.wearAt(n) == Wear.WORN),
                count(settings, stage, n -> range.contains(n) && moved.wearAt(n) == Wear.BARRED));
    }

    private static int count(List<Setting> settings, int stage, IntPredicate which) {
        return (int) settings.stream().filter(setting -> which.test(setting.index(stage))).count();
    }
}
