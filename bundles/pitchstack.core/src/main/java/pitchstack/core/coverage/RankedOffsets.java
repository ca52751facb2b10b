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
    private final int[] slot;
    private final long[] residue;
    private final long[] effort;
    /** How many steps what it reaches begins above the lowest reach, and how far beyond that; the same for its end. */
    private final long[] fromSteps;
    private final long[] fromBeyond;
    private final long[] toSteps;
    private final long[] toBeyond;

    private RankedOffsets(Found found, long[] relative, long lowest, long tolerance, long step) {
        int size = found.size;
        long[] order = new long[size];
        Arrays.setAll(order, i -> i);
        this.effort = Arrays.copyOf(found.effort, size);
        new PairSort().sort(effort, order, size);
        this.slot = new int[size];
        this.residue = new long[size];
        this.fromSteps = new long[size];
        this.fromBeyond = new long[size];
        this.toSteps = new long[size];
        this.toBeyond = new long[size];
        for (int i = 0; i < size; i++) {
            slot[i] = Arrays.binarySearch(relative, found.lap[(int) order[i]]);
            residue[i] = found.residue[(int) order[i]];
            long from = residue[i] - tolerance - lowest;
            fromSteps[i] = from / step;
            fromBeyond[i] = from % step;
            toSteps[i] = (from + 2 * tolerance + 1) / step;
            toBeyond[i] = (from + 2 * tolerance + 1) % step;
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
            for (int entry = laps.firstEntry(group); entry < laps.firstEntry(group + 1); entry++) {
                long residue = laps.residue(group, entry);
                for (int aside = -1; aside <= 1; aside++) {
                    long lap = laps.lap(group) + aside;
                    long seen = residue - aside * laps.pitch();
                    if (seen >= -reach && seen < laps.pitch() + reach && wanted.test(lap)) {
                        found.add(lap, seen, laps.figure(entry) + perLap * lap);
                    }
                }
            }
        }
        return new RankedOffsets(found, relative, lowest(places, tolerance), tolerance, step);
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
        return fromSteps[i] + (fromBeyond[i] > phase ? 1 : 0);
    }

    /** The first cell that it no longer reaches. */
    long to(int i, long phase) {
        return toSteps[i] + (toBeyond[i] > phase ? 1 : 0);
    }

    /** Offsets not yet in order. */
    private static final class Found {
        private long[] lap = new long[64];
        private long[] residue = new long[64];
        private long[] effort = new long[64];
        private int size;

        private void add(long ofLap, long seen, long costs) {
            if (size == lap.length) {
                lap = Arrays.copyOf(lap, 2 * size);
                residue = Arrays.copyOf(residue, 2 * size);
                effort = Arrays.copyOf(effort, 2 * size);
            }
            lap[size] = ofLap;
            residue[size] = seen;
            effort[size++] = costs;
        }
    }
}
