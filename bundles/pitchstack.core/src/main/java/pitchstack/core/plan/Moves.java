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
        return new Moves(prepared.tables, from, last, prepared.approach, prepared.bandsFrom(from));
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

    /** The effort of the move to a setting, in milliseconds. */
    long effort(int[] to) {
        long effort = 0;
        for (int j = 0; j < to.length; j++) {
            effort += stages[j].effort(to[j]);
        }
        return effort;
    }

    /** Whether a setting can be moved to: each tooth further may be used, and some order of the steps keeps the limits. */
    boolean allow(int[] to) {
        if (free) {
            return true;
        }
        for (int j = 0; j < to.length; j++) {
            if (!stages[j].allows(to[j])) {
                return false;
            }
        }
        return order.isFree() || order.find(to) != null;
    }

    /** The steps to a setting that can be moved to, in order. */
    List<Step> steps(int[] to) {
        List<Step> steps = new ArrayList<>();
        for (int j : order.find(to)) {
            int from = stages[j].from;
            int turn = stages[j].turn(to[j]);
            if (turn == to[j]) {
                steps.add(new Step(j, from, to[j]));
            } else {
                steps.add(new Step(j, from, turn, Step.Kind.FURTHER));
                steps.add(new Step(j, turn, to[j], Step.Kind.RETURN));
            }
        }
        return steps;
    }
}
