// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.Arrays;
import java.util.List;

/**
 * Finds an order of the steps of the stages of one component in which every limit holds after each; between the ends of a
 * step a shift only grows or only falls, so the ends suffice. A limit that is broken at the start need only hold at the end,
 * and so does one over a stage whose rows do not meet at the start. One object serves one starting setting and one thread.
 */
final class MoveOrder {
    private final Component component;
    private final StageMoves[] stages;
    /** The limits that hold at the start. */
    private final ShiftBand[] bands;
    private final long[] startShift;
    /** By set of stages moved, one bit a stage: whether no order of the rest is left. */
    private final boolean[] dead;
    private final int[] order;
    private int[] to;
    private int toMove;

    /**
     * @param stages the moves of every stage of the axis
     * @param component the stages to order, and their limits
     */
    MoveOrder(StageMoves[] stages, Component component) {
        this.stages = stages;
        this.component = component;
        this.bands = heldAtStart(component.bands());
        this.startShift = new long[bands.length];
        for (int b = 0; b < bands.length; b++) {
            startShift[b] = shiftAtStart(bands[b]);
        }
        this.dead = new boolean[bands.length == 0 ? 0 : 1 << component.highest() + 1];
        this.order = new int[stages.length];
    }

    private ShiftBand[] heldAtStart(List<ShiftBand> all) {
        ShiftBand[] held = new ShiftBand[all.size()];
        int count = 0;
        for (ShiftBand band : all) {
            if (holdsAtStart(band)) {
                held[count++] = band;
            }
        }
        return Arrays.copyOf(held, count);
    }

    private boolean holdsAtStart(ShiftBand band) {
        for (int j = band.lowest(); j <= band.highest(); j++) {
            if (!stages[j].table.meets(stages[j].from)) {
                return false;
            }
        }
        return band.contains(shiftAtStart(band));
    }

    private long shiftAtStart(ShiftBand band) {
        long shift = 0;
        for (int j = band.lowest(); j <= band.highest(); j++) {
            shift += stages[j].table.offset(stages[j].from);
        }
        return shift;
    }

    /** Whether there is no limit to keep, so that the stages may move in any order. */
    boolean isFree() {
        return bands.length == 0;
    }

    /**
     * The steps to a setting. Each stage moves once if some order allows that, and then in the first such order if one
     * compares the stages from the first step on; else stages take turns, see {@link MoveSplitter}.
     *
     * @param indices one index a stage of the axis
     * @param mostMs what further steps of stages may cost
     * @return null where there is no way, or none at that cost
     */
    MoveSplitter.Split find(int[] indices, long mostMs) {
        to = indices;
        toMove = 0;
        for (int j = component.lowest(); j <= component.highest(); j++) {
            toMove |= indices[j] == stages[j].from ? 0 : 1 << j;
        }
        Arrays.fill(dead, false);
        return extend(0, 0) ? inOneGo() : new MoveSplitter(stages, component, bands, indices, mostMs).find();
    }

    private MoveSplitter.Split inOneGo() {
        int[] steps = new int[2 * Integer.bitCount(toMove)];
        for (int i = 0; i < steps.length; i += 2) {
            steps[i] = order[i / 2];
            steps[i + 1] = to[order[i / 2]];
        }
        return new MoveSplitter.Split(steps, 0);
    }

    private boolean extend(int moved, int steps) {
        if (moved == toMove) {
            return true;
        }
        for (int j = component.lowest(); j <= component.highest(); j++) {
            int next = moved | 1 << j;
            if (next != moved && (toMove & 1 << j) != 0 && (isFree() || !dead[next] && canMove(j, moved))) {
                order[steps] = j;
                if (extend(next, steps + 1)) {
                    return true;
                }
                dead[next] = true;
            }
        }
        return false;
    }

    private boolean canMove(int stage, int moved) {
        StageTable table = stages[stage].table;
        long start = table.offset(stages[stage].from);
        for (int b = 0; b < bands.length; b++) {
            if (bands[b].concerns(stage)) {
                long before = shift(b, moved);
                if (!bands[b].contains(before + table.offset(stages[stage].turn(to[stage])) - start)
                        || !bands[b].contains(before + table.offset(to[stage]) - start)) {
                    return false;
                }
            }
        }
        return true;
    }

    private long shift(int band, int moved) {
        long shift = startShift[band];
        for (int j = bands[band].lowest(); j <= bands[band].highest(); j++) {
            if ((moved & 1 << j) != 0) {
                shift += stages[j].table.offset(to[j]) - stages[j].table.offset(stages[j].from);
            }
        }
        return shift;
    }
}
