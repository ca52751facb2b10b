// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.ArrayList;
import java.util.List;
import pitchstack.core.stack.Approach;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.Setting;

/**
 * All moves from one starting setting: what each costs, whether it can be made, and its steps in order. One object
 * serves one thread.
 */
final class Moves {
    private static final int[] NO_STEPS = {};

    private final StageMoves[] stages;
    private final Preparation prepared;
    /** By component; made when asked for. */
    private final MoveOrder[] orders;
    private BlockMoves[] blocks;

    private Moves(Preparation prepared, Setting from, Directions last) {
        this.prepared = prepared;
        this.stages = new StageMoves[prepared.tables.length];
        for (int j = 0; j < stages.length; j++) {
            stages[j] = new StageMoves(prepared.tables[j], from.index(j), last.of(j), prepared.approach);
        }
        this.orders = new MoveOrder[prepared.components.length];
    }

    /** The moves that the approach rule and the limits allow. */
    static Moves from(Preparation prepared, Setting from, Directions last) {
        return new Moves(prepared, from, last);
    }

    /** How many stages there are. */
    int count() {
        return stages.length;
    }

    /** The moves of one stage. */
    StageMoves stage(int stage) {
        return stages[stage];
    }

    /** The orders of the steps in one component. */
    MoveOrder order(Component component) {
        int c = 0;
        while (prepared.components[c] != component) {
            c++;
        }
        return order(c);
    }

    private MoveOrder order(int c) {
        if (orders[c] == null) {
            orders[c] = new MoveOrder(stages, prepared.components[c]);
        }
        return orders[c];
    }

    /** The moves of each listed block. */
    BlockMoves[] blocks() {
        if (blocks == null) {
            Block[] listed = prepared.blocks();
            int[] from = new int[stages.length];
            for (int j = 0; j < from.length; j++) {
                from[j] = stages[j].from;
            }
            blocks = new BlockMoves[listed.length];
            for (int b = 0; b < blocks.length; b++) {
                blocks[b] = listed[b].cache.of(this, from);
            }
        }
        return blocks;
    }

    /** What it costs to move to each setting of each listed block, where all are known. */
    long[][] efforts() {
        BlockMoves[] all = blocks();
        long[][] efforts = new long[all.length][];
        for (int b = 0; b < efforts.length; b++) {
            efforts[b] = all[b].effort;
        }
        return efforts;
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
     * @param mostMs the most that is of interest
     * @return milliseconds, or −1 where the setting cannot be moved to: a tooth further may not be used, or no order of
     *     steps keeps the limits, or none that costs no more than that
     */
    long extraEffort(int[] to, long mostMs) {
        if (prepared.approach != Approach.EITHER) {
            for (int j = 0; j < to.length; j++) {
                if (!stages[j].allows(to[j])) {
                    return -1;
                }
            }
        }
        return extraEffort(prepared.tiedComponents, to, mostMs);
    }

    /** What moves in some of the components cost beyond one step a stage, or −1. */
    long extraEffort(int[] components, int[] to, long mostMs) {
        long sum = 0;
        for (int c : components) {
            if (!order(c).isFree()) {
                MoveSplitter.Split split = orders[c].find(to, mostMs - sum);
                if (split == null) {
                    return -1;
                }
                sum += split.extraMs();
            }
        }
        return sum;
    }

    /** The steps to a setting that can be moved to, in order: of all that can come next, the lowest stage's. */
    List<Step> steps(int[] to) {
        int[][] parts = new int[prepared.components.length][];
        int count = 0;
        for (int c = 0; c < parts.length; c++) {
            parts[c] = steps(c, to);
            count += parts[c].length / 2;
        }
        int[] at = new int[stages.length];
        for (int j = 0; j < at.length; j++) {
            at[j] = stages[j].from;
        }
        int[] done = new int[parts.length];
        List<Step> steps = new ArrayList<>(2 * count);
        for (int c = next(parts, done); c >= 0; c = next(parts, done)) {
            add(parts[c][done[c]], parts[c][done[c] + 1], to, at, steps);
            done[c] += 2;
        }
        return steps;
    }

    /** The steps within one component, stage and index by step. */
    private int[] steps(int c, int[] to) {
        Component component = prepared.components[c];
        if (!moves(component, to)) {
            return NO_STEPS;
        }
        if (component.lowest() == component.highest() && component.bands().isEmpty()) {
            return new int[] {component.lowest(), to[component.lowest()]};
        }
        for (BlockMoves listed : blocks()) {
            if (listed.block.component == component && listed.block.isTabled()) {
                return listed.steps(listed.block.number(to));
            }
        }
        return order(c).find(to, Long.MAX_VALUE).steps();
    }

    private boolean moves(Component component, int[] to) {
        for (int j = component.lowest(); j <= component.highest(); j++) {
            if (to[j] != stages[j].from) {
                return true;
            }
        }
        return false;
    }

    private static int next(int[][] parts, int[] done) {
        int next = -1;
        for (int c = 0; c < parts.length; c++) {
            if (done[c] < parts[c].length && (next < 0 || parts[c][done[c]] < parts[next][done[next]])) {
                next = c;
            }
        }
        return next;
    }

    private void add(int j, int index, int[] to, int[] at, List<Step> steps) {
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
}
