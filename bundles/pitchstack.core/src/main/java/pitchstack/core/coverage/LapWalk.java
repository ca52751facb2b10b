// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.concurrent.CancellationException;
import pitchstack.core.coverage.Bounds.Arc;
import pitchstack.core.plan.Progress;

/**
 * Walks over places lap by lap. For one spacing, and one thread.
 *
 * @param places the places
 * @param tree the runs of their laps
 */
record LapWalk(Places places, RunTree tree) {
    /** Laps between two looks at the progress. */
    private static final int LOOK = 256;

    /**
     * Walks over the places of some laps in a window.
     *
     * @param window the places that count
     * @param fromLap the lowest lap to look at
     * @param toLap the highest
     * @throws CancellationException if cancelled
     */
    void walk(Arc window, long fromLap, long toLap, Progress progress, LapSink sink) {
        long cutLow = places.lapOf(window.low());
        long cutHigh = places.lapOf(window.high());
        long begin = Math.max(Math.max(fromLap, cutLow), places.firstLap());
        long end = Math.min(Math.min(toLap, cutHigh), places.lastLap());
        long pitch = places.laps.pitch();
        Spans all = tree.all();
        int looks = 0;
        for (long lap = places.nextLap(begin); lap <= end; lap = places.nextLap(lap + 1)) {
            if (looks++ % LOOK == 0) {
                look(progress, lap - begin, end - begin);
            }
            long base = places.base(lap);
            long until = Math.min(Math.min(places.fullUntil(lap), end), cutHigh - 1);
            if (lap == cutLow || lap == cutHigh) {
                sink.lap(base, lapRuns(lap, window.low() - base, window.high() - base));
            } else if (until >= lap) {
                sink.alike(base, until - lap + 1, pitch, all);
                lap = until;
            } else {
                sink.lap(base, lapRuns(lap, 0, pitch));
            }
        }
    }

    private static void look(Progress progress, long part, long of) {
        if (progress.isCancelled()) {
            throw new CancellationException();
        }
        progress.done(part, of);
    }

    /** The runs of one lap between two residues, both included. */
    private Spans lapRuns(long lap, long low, long high) {
        Laps laps = places.laps;
        boolean whole = low <= 0 && high >= laps.pitch();
        Spans union = Spans.NONE;
        for (int run = places.runEndingFrom(lap - laps.highestLap()); run < places.runs()
                && places.runFirst(run) <= lap - laps.lowestLap(); run++) {
            int from = laps.firstFrom(lap - places.runLast(run));
            int to = laps.firstFrom(lap - places.runFirst(run) + 1);
            if (from < to) {
                union = union.or(whole ? tree.range(from, to) : tree.range(from, to, low, high), tree.join());
            }
        }
        return union;
    }
}
