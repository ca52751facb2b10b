// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import pitchstack.core.stack.Approach;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.Setting;

/**
 * All moves from one starting setting: what each costs, whether it can be made, and its steps in order. One object
 * serves one thread.
 */
final class Moves {
    private final StageMoves[] stages;
    private final MoveOrder order;
    /** Whether every move can be made, in any order. */
    private final boolean free;

    private Moves(StageTable[] tables, Setting from, Directions last, Approach approach, ShiftBand[] bands) {
        stages = new StageMoves[tables.length];
        for (int j = 0; j < stages.length; j++) {
            stages[j] = new StageMoves(tables[j], from.index(j), last.of(j), approach);
        }
        order = new MoveOrder(stages, bands);
        free = approach == Approach.EITHER && order.isFree();
    }

    /** The moves that the approach rule and the limits allow. */
    static Moves from(Preparation prepared, Setting from, Directions last) {
        return new Moves(prepared.tables, from, last, prepared.approach, prepared.bands());
    }

    /** The moves there would be from the same setting without approach rule and limits on the way. */
    Moves unlimited() {
        StageTable[] tables = Arrays.stream(stages).map(stage -> stage.table).toArray(StageTable[]::new);
        Setting from = Setting.of(Arrays.stream(stages).mapToInt(stage -> stage.from).toArray());
        return new Moves(tables, from, Directions.unknown(stages.length), Approach.EITHER, new ShiftBand[0]);
    }

    /** Whether every move can be made, in any order. */
    boolean areFree() {
        return free;
    }

    /** How many stages there are. */
    int count() {
        return stages.length;
    }

    /** The moves of one stage. */
    StageMoves stage(int stage) {
        return stages[stage];
    }

    /** The effort of the move to a setting with one step a stage, in milliseconds: the least that it can cost. */
    long effort(int[] to) {
        long effort = 0;
        for (int j = 0; j < to.length; j++) {
            effort += stages[j].effort(to[j]);
        }
        return effort;
    }

    /**
     * What a move costs beyond {@link #effort}, for stages that move in more steps than one to keep the limits.
     *
     * @return milliseconds, or −1 where the setting cannot be moved to: a tooth further may not be used, or no order of
     *     steps keeps the limits
     */
    long extraEffort(int[] to) {
        if (free) {
            return 0;
        }
        for (int j = 0; j < to.length; j++) {
            if (!stages[j].allows(to[j])) {
                return -1;
            }
        }
        if (order.isFree()) {
            return 0;
        }
        MoveSplitter.Split split = order.find(to);
        return split == null ? -1 : split.extraMs();
    }

    /** The steps to a setting that can be moved to, in order. */
    List<Step> steps(int[] to) {
        int[] numbers = order.find(to).steps();
        int[] at = Arrays.stream(stages).mapToInt(stage -> stage.from).toArray();
        List<Step> steps = new ArrayList<>();
        for (int i = 0; i < numbers.length; i += 2) {
            int j = numbers[i];
            int index = numbers[i + 1];
            int turn = index == to[j] ? stages[j].turn(index) : index;
            if (index != to[j]) {
                steps.add(new Step(j, at[j], index, Step.Kind.PARTWAY));
            } else if (turn == index) {
                steps.add(new Step(j, at[j], index));
            } else {
                steps.add(new Step(j, at[j], turn, Step.Kind.FURTHER));
                steps.add(new Step(j, turn, index, Step.Kind.RETURN));
            }
            at[j] = index;
        }
        return steps;
    }
}
