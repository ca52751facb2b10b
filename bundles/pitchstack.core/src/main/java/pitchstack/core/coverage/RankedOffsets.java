// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.Arrays;
import java.util.function.LongPredicate;

/**
 * The offsets that can reach into a lap, the one that costs least first, made ready for a grid. An offset counts to the
 * lap in which it lies, and to a neighbouring one where tolerance and errors may carry it there; so one lap of offsets
 * stands for one index of the coarse stage. Never changed.
 */
final class RankedOffsets {
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

    private RankedOffsets(Found found, long lowest, long tolerance, long step) {
        int size = found.size;
        long[] order = new long[size];
        Arrays.setAll(order, i -> i);
        this.step = step;
        this.length = (2 * tolerance + 1) / step;
        this.rest = (2 * tolerance + 1) % step;
        this.effort = Arrays.copyOf(found.effort, size);
        new PairSort().sort(effort, order, size);
        this.slot = new int[size];
        this.residue = new long[size];
        this.steps = new long[size];
        this.beyond = new long[size];
        for (int i = 0; i < size; i++) {
            slot[i] = found.slot[(int) order[i]];
            residue[i] = found.residue[(int) order[i]];
            steps[i] = (residue[i] - tolerance - lowest) / step;
            beyond[i] = residue[i] - tolerance - lowest - steps[i] * step;
        }
    }

    /** The lowest residue at which anything begins that an offset reaches. */
    static long lowest(Places places, long tolerance) {
        return -2 * tolerance - places.largestError();
    }

    /**
     * All offsets.
     *
     * @param relative the laps of offsets, ascending, and those beside them
     * @param perLap what each lap adds to the effort of its offsets
     * @param step the step of the grid
     */
    static RankedOffsets of(Places places, long[] relative, long tolerance, long perLap, long step) {
        return of(places, relative, tolerance, perLap, step, 0, places.laps.groups(), lap -> true);
    }

    /** The offsets of one lap alone. */
    static RankedOffsets ofLap(Places places, long[] relative, long tolerance, long only, long step) {
        return of(places, relative, tolerance, 0, step, places.laps.firstFrom(only - 1), places.laps.firstFrom(only + 2),
                lap -> lap == only);
    }

    private static RankedOffsets of(Places places, long[] relative, long tolerance, long perLap, long step,
            int from, int to, LongPredicate wanted) {
        Laps laps = places.laps;
        long reach = tolerance + places.largestError();
        Found found = new Found();
        for (int group = from; group < to; group++) {
            for (int aside = -1; aside <= 1; aside++) {
                long lap = laps.lap(group) + aside;
                if (wanted.test(lap)) {
                    int slot = Arrays.binarySearch(relative, lap);
                    long shift = aside * laps.pitch();
                    int end = laps.entryFrom(group, shift + laps.pitch() + reach);
                    for (int entry = laps.entryFrom(group, shift - reach); entry < end; entry++) {
                        found.add(slot, laps.residue(group, entry) - shift, laps.figure(entry) + perLap * lap);
                    }
                }
            }
        }
        return new RankedOffsets(found, lowest(places, tolerance), tolerance, step);
    }

    int size() {
        return slot.length;
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
        return steps[i] + (beyond[i] > phase ? 1 : 0);
    }

    /** The first cell that it no longer reaches. */
    long to(int i, long phase) {
        long past = beyond[i] + rest - phase;
        // One more above 0 and another above a step, without a branch that would be as good as random.
        return steps[i] + length + (-past >>> Long.SIZE - 1) + (step - past >>> Long.SIZE - 1);
    }

    /** Offsets not yet in order. */
    private static final class Found {
        private int[] slot = new int[64];
        private long[] residue = new long[64];
        private long[] effort = new long[64];
        private int size;

        private void add(int of, long seen, long costs) {
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
