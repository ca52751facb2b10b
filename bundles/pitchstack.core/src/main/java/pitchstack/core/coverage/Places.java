// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.concurrent.CancellationException;
import pitchstack.core.plan.Progress;

/**
 * Every place that the settings over teeth no worse than one kind give: datum + n · P + offset, with n an allowed
 * index of the coarse stage of pitch P. Lap m holds the places in [datum + m · P, datum + (m + 1) · P); a group of
 * offsets of lap w comes to lie in it where m − w is an allowed index. Never changed.
 */
final class Places {
    /** Takes the runs of places, lap by lap, the lowest lap first. */
    interface Sink {
        /** One lap that starts at a place. */
        void lap(long base, Spans residues);

        /** Laps that all look alike, with every group in them; the first starts at a place. */
        default void alike(long base, long laps, long pitch, Spans residues) {
            for (long i = 0; i < laps; i++) {
                lap(base + i * pitch, residues);
            }
        }
    }

    /** Laps between two looks at the progress. */
    private static final int LOOK = 256;

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
                ways += laps.ways(low - base(n), high - base(n));
            }
        }
        return ways;
    }

    /** The first run of indices that ends at or above one, or their number. */
    private int runEndingFrom(long index) {
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

    /**
     * Walks over the places of some laps in a window.
     *
     * @param tree the runs of these places' laps
     * @param low the lowest place that counts
     * @param high the highest
     * @param fromLap the lowest lap to look at
     * @param toLap the highest
     * @throws CancellationException if cancelled
     */
    void walk(RunTree tree, long low, long high, long fromLap, long toLap, Progress progress, Sink sink) {
        long cutLow = lapOf(low);
        long cutHigh = lapOf(high);
        long begin = Math.max(Math.max(fromLap, cutLow), firstLap());
        long end = Math.min(Math.min(toLap, cutHigh), lastLap());
        Spans all = tree.all();
        int looks = 0;
        for (long lap = nextLap(begin); lap <= end; lap = nextLap(lap + 1)) {
            if (looks++ % LOOK == 0) {
                look(progress, lap - begin, end - begin);
            }
            long until = Math.min(Math.min(fullUntil(lap), end), cutHigh - 1);
            if (lap == cutLow || lap == cutHigh) {
                sink.lap(base(lap), lapRuns(tree, lap, low - base(lap), high - base(lap)));
            } else if (until >= lap) {
                sink.alike(base(lap), until - lap + 1, pitch, all);
                lap = until;
            } else {
                sink.lap(base(lap), lapRuns(tree, lap, 0, pitch));
            }
        }
    }

    private static void look(Progress progress, long part, long of) {
        if (progress.isCancelled()) {
            throw new CancellationException();
        }
        progress.done(part, of);
    }

    /** The first lap from one on in which a group lies, were all indices between the ends allowed. */
    private long nextLap(long lap) {
        int group = laps.firstFrom(lap - runLast[runLast.length - 1]);
        return group == laps.groups() ? Long.MAX_VALUE : Math.max(lap, laps.lap(group) + runFirst[0]);
    }

    private Spans lapRuns(RunTree tree, long lap, long low, long high) {
        Spans union = Spans.NONE;
        for (int run = runEndingFrom(lap - laps.highestLap()); run < runFirst.length
                && runFirst[run] <= lap - laps.lowestLap(); run++) {
            int from = laps.firstFrom(lap - runLast[run]);
            int to = laps.firstFrom(lap - runFirst[run] + 1);
            if (from < to) {
                boolean whole = low <= 0 && high >= pitch;
                union = union.or(whole ? tree.range(from, to) : tree.range(from, to, low, high), tree.join());
            }
        }
        return union;
    }
}
