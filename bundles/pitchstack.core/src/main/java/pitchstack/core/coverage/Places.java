// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

/**
 * Every place that the settings over teeth no worse than one kind give: datum + n · P + offset, with n an allowed
 * index of the coarse stage of pitch P. Lap m holds the places in [datum + m · P, datum + (m + 1) · P); a group of
 * offsets of lap w comes to lie in it where m − w is an allowed index. Never changed.
 */
final class Places {
    final long datum;
    final Laps laps;
    private final long pitch;
    /** Neighbouring allowed indices of the coarse stage: the first and last of each run, ascending. */
    private final int[] runFirst;
    private final int[] runLast;

    /** Places of at least one offset and one index. */
    Places(long datum, Laps laps, int[] runFirst, int[] runLast) {
        this.datum = datum;
        this.laps = laps;
        this.pitch = laps.pitch();
        this.runFirst = runFirst;
        this.runLast = runLast;
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
            long first = Math.max(runFirst[run], -Math.floorDiv(laps.highest() + datum - low, pitch));
            long last = Math.min(runLast[run], Math.floorDiv(high - datum - laps.lowest(), pitch));
            for (long n = first; n <= last; n++) {
                ways += laps.sum(low - base(n), high - base(n));
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

    /** The last lap of those from this one on that hold every group, or the lap before where this one does not. */
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
