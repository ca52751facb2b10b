// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import pitchstack.core.stack.IndexErrors;

/**
 * Every place that the settings over teeth no worse than one kind give: datum + n · P + e(n) + offset, with n an allowed
 * index of the coarse stage of pitch P and e(n) its error. Lap m is [datum + m · P, datum + (m + 1) · P); a group of
 * offsets of lap w comes to lie in it where m − w is an allowed index, if that has no error. Never changed.
 */
final class Places {
    final long datum;
    final Laps laps;
    private final long pitch;
    /** Neighbouring allowed indices of the coarse stage: the first and last of each run, ascending. */
    private final int[] runFirst;
    private final int[] runLast;
    /** By index from the first allowed one on; empty where none has an error. */
    private final long[] error;
    private final long largestError;

    /** Places of at least one offset and one index. */
    Places(long datum, Laps laps, int[] runFirst, int[] runLast, IndexErrors errors) {
        this.datum = datum;
        this.laps = laps;
        this.pitch = laps.pitch();
        this.runFirst = runFirst;
        this.runLast = runLast;
        this.error = errors.isNone() ? new long[0] : new long[runLast[runLast.length - 1] - runFirst[0] + 1];
        long largest = 0;
        for (int i = 0; i < error.length; i++) {
            error[i] = errors.at(runFirst[0] + i);
            largest = Math.max(largest, Math.abs(error[i]));
        }
        this.largestError = largest;
    }

    /** Whether no index of the coarse stage has an error, so that every lap is like the next. */
    boolean isEven() {
        return largestError == 0;
    }

    /** The largest error of an index by amount, less than half a pitch. */
    long largestError() {
        return largestError;
    }

    /** The error of an allowed index. */
    long error(long index) {
        return largestError == 0 ? 0 : error[(int) (index - runFirst[0])];
    }

    /** Whether an index is allowed. */
    boolean allows(long index) {
        int run = runEndingFrom(index);
        return run < runFirst.length && runFirst[run] <= index;
    }

    /** Where an allowed index with offset 0 stands. */
    long at(long index) {
        return base(index) + error(index);
    }

    int runs() {
        return runFirst.length;
    }

    int runFirst(int run) {
        return runFirst[run];
    }

    int runLast(int run) {
        return runLast[run];
    }

    int firstIndex() {
        return runFirst[0];
    }

    int lastIndex() {
        return runLast[runLast.length - 1];
    }

    long base(long lap) {
        return datum + lap * pitch;
    }

    long lapOf(long place) {
        return Math.floorDiv(place - datum, pitch);
    }

    /** The lowest lap that holds a place. */
    long firstLap() {
        return laps.lowestLap() + runFirst[0];
    }

    /** The highest lap that holds a place. */
    long lastLap() {
        return laps.highestLap() + runLast[runLast.length - 1];
    }

    /** How many settings give a place between two bounds, both included. */
    long ways(long low, long high) {
        long ways = 0;
        for (int run = 0; run < runFirst.length; run++) {
            long first = Math.max(runFirst[run],
                    -Math.floorDiv(laps.highest() + datum - low + largestError, pitch));
            long last = Math.min(runLast[run], Math.floorDiv(high - datum - laps.lowest() + largestError, pitch));
            for (long n = first; n <= last; n++) {
                ways += laps.sum(low - at(n), high - at(n));
            }
        }
        return ways;
    }

    /** The first run of indices that ends at or above one, or their number. */
    int runEndingFrom(long index) {
        int low = 0;
        int high = runLast.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (runLast[middle] < index) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /**
     * The last lap of those from this one on that hold every group, or the lap before where this one does not. Of places
     * that are not even it does not tell what the laps look like.
     */
    long fullUntil(long lap) {
        int run = runEndingFrom(lap - laps.lowestLap());
        boolean full = run < runFirst.length && runFirst[run] <= lap - laps.highestLap();
        return full ? runLast[run] + laps.lowestLap() : lap - 1;
    }

    /** The last lap of those from this one on that hold nothing, or the lap before where this one may hold some. */
    long emptyUntil(long lap) {
        int run = runEndingFrom(lap - laps.highestLap());
        if (run == runFirst.length) {
            return Long.MAX_VALUE;
        }
        return Math.max(lap - 1, runFirst[run] + laps.lowestLap() - 1);
    }

    /** The first lap from one on in which a group lies, were all indices between the ends allowed. */
    long nextLap(long lap) {
        int group = laps.firstFrom(lap - runLast[runLast.length - 1]);
        return group == laps.groups() ? Long.MAX_VALUE : Math.max(lap, laps.lap(group) + runFirst[0]);
    }
}
