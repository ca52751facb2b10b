// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.Arrays;

/**
 * Offsets that can reach into a lap, the one that costs least first, made ready for a grid. An offset counts to the lap
 * in which it lies, and to a neighbouring one where tolerance and errors may carry it there; so one lap of offsets stands
 * for one index of the coarse stage. Never changed.
 */
final class RankedOffsets {
    private final boolean complete;
    private final long step;
    private final int[] slot;
    private final long[] residue;
    private final long[] effort;
    /** How many steps what it reaches begins above the lowest reach, and how far beyond that. */
    private final long[] steps;
    private final long[] beyond;
    /** How many steps each reaches, and how far beyond that. */
    private final long length;
    private final long rest;

    /**
     * @param lowest a residue no higher than any
     * @param length how many counts each reaches, its residue in the middle
     * @param step the step of the grid
     * @param complete whether these are all
     */
    RankedOffsets(Found found, long lowest, long length, long step, boolean complete) {
        int size = found.size;
        long[] order = new long[size];
        Arrays.setAll(order, i -> i);
        this.complete = complete;
        this.step = step;
        this.length = length / step;
        this.rest = length % step;
        this.effort = Arrays.copyOf(found.effort, size);
        new PairSort().sort(effort, order, size);
        this.slot = new int[size];
        this.residue = new long[size];
        this.steps = new long[size];
        this.beyond = new long[size];
        for (int i = 0; i < size; i++) {
            slot[i] = found.slot[(int) order[i]];
            residue[i] = found.residue[(int) order[i]];
            steps[i] = (residue[i] - lowest) / step;
            beyond[i] = residue[i] - lowest - steps[i] * step;
        }
    }

    int size() {
        return slot.length;
    }

    /** Whether these are all offsets, not only the cheapest. */
    boolean isComplete() {
        return complete;
    }

    /** The place, among the laps of offsets, of the one to which it counts. */
    int slot(int i) {
        return slot[i];
    }

    /** How far it lies above the start of that lap; below 0 or beyond a pitch where it lies in a neighbouring one. */
    long residue(int i) {
        return residue[i];
    }

    long effort(int i) {
        return effort[i];
    }

    /**
     * The first cell that it reaches, counted from the first at or above the lowest residue.
     *
     * @param phase how far above that residue that cell lies
     */
    long from(int i, long phase) {
        return steps[i] + (phase - beyond[i] >>> Long.SIZE - 1);
    }

    /** The first cell that it no longer reaches. */
    long to(int i, long phase) {
        long past = beyond[i] + rest - phase;
        // One more above 0 and another above a step, without a branch that would be as good as random.
        return steps[i] + length + (-past >>> Long.SIZE - 1) + (step - past >>> Long.SIZE - 1);
    }

    /** Offsets not yet in order. */
    static final class Found {
        private int[] slot = new int[64];
        private long[] residue = new long[64];
        private long[] effort = new long[64];
        private int size;

        void add(int of, long seen, long costs) {
            if (size == slot.length) {
                slot = Arrays.copyOf(slot, 2 * size);
                residue = Arrays.copyOf(residue, 2 * size);
                effort = Arrays.copyOf(effort, 2 * size);
            }
            slot[size] = of;
            residue[size] = seen;
            effort[size++] = costs;
        }
    }
}
