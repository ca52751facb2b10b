// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.Arrays;
import java.util.concurrent.CancellationException;
import pitchstack.core.coverage.Bounds.Arc;
import pitchstack.core.plan.Progress;

/**
 * Walks over places tooth by tooth of a coarse stage whose indices have errors, so that no lap is like another. Each
 * index carries the runs of all offsets together, which are found once, to its own place. The run of an index that begins
 * in a lap without its error begins in that lap, the one before or the one after with it; so runs are put in order lap by
 * lap. For one spacing, and one thread.
 */
final class ToothWalk {
    /** Laps between two looks at the progress. */
    private static final int LOOK = 256;

    private final Places places;
    private final long join;
    /** The runs of all offsets, and by lap in which some begin: the lap, and the first of them; one more for the end. */
    private final Spans runs;
    private final long[] lap;
    private final int[] start;
    private final long longest;
    private final PairSort sort = new PairSort();

    /** The walk over places of one spacing. */
    ToothWalk(Places places, long join) {
        this.places = places;
        this.join = join;
        this.runs = places.laps.together(join);
        long pitch = places.laps.pitch();
        long[] laps = new long[runs.size()];
        int[] starts = new int[runs.size() + 1];
        int groups = 0;
        long most = 0;
        for (int i = 0; i < runs.size(); i++) {
            long of = Math.floorDiv(runs.first(i), pitch);
            if (groups == 0 || laps[groups - 1] != of) {
                laps[groups] = of;
                starts[groups++] = i;
            }
            most = Math.max(most, runs.last(i) - runs.first(i));
        }
        starts[groups] = runs.size();
        this.lap = Arrays.copyOf(laps, groups);
        this.start = Arrays.copyOf(starts, groups + 1);
        this.longest = most;
    }

    long join() {
        return join;
    }

    /** How many runs each index carries. */
    int runs() {
        return runs.size();
    }

    /** The sum of what they cover when each is widened by a tolerance. */
    double covered(long tolerance) {
        double sum = 0;
        for (int i = 0; i < runs.size(); i++) {
            sum += (double) runs.last(i) - runs.first(i) + 2.0 * tolerance + 1;
        }
        return sum;
    }

    /** Walks over the places in a window. */
    void walk(Arc window, Progress progress, LapSink sink) {
        Batch waiting = reachingIn(window);
        long begin = Math.max(places.lapOf(window.low()) - 1, lap[0] + places.firstIndex());
        long end = Math.min(places.lapOf(window.high()) + 1, lap[lap.length - 1] + places.lastIndex());
        Batch before = new Batch();
        Batch here = new Batch();
        Batch after = new Batch();
        for (long m = begin; m <= end; m++) {
            if ((m - begin) % LOOK == 0) {
                look(progress, m - begin, end - begin);
            }
            fill(m, window, before, here, after);
            waiting.moveTo(places.base(m), before);
            before.emptyInto(sink, sort);
            Batch empty = before;
            before = here;
            here = after;
            after = empty;
        }
        waiting.moveTo(places.base(end + 1), before);
        before.emptyInto(sink, sort);
        waiting.moveTo(Long.MAX_VALUE, here);
        here.emptyInto(sink, sort);
    }

    private static void look(Progress progress, long part, long of) {
        if (progress.isCancelled()) {
            throw new CancellationException();
        }
        progress.done(part, of);
    }

    /** What is left, in order, of the runs that begin below a window and reach into it. */
    private Batch reachingIn(Arc window) {
        Batch found = new Batch();
        long first = places.lapOf(window.low() - longest) - 1;
        for (long m = first; m <= places.lapOf(window.low()) + 1; m++) {
            for (int w = 0; w < lap.length; w++) {
                long n = m - lap[w];
                if (places.allows(n)) {
                    long at = places.at(n);
                    for (int i = start[w]; i < start[w + 1]; i++) {
                        if (at + runs.first(i) < window.low() && at + runs.last(i) >= window.low()) {
                            Spans left = places.laps.between(window.low() - at,
                                    Math.min(runs.last(i), window.high() - at));
                            if (!left.isEmpty()) {
                                found.add(at + left.lowest(), at + left.highest());
                            }
                        }
                    }
                }
            }
        }
        found.sort(sort);
        return found;
    }

    /** Adds the runs that begin in a lap but for their errors, and in a window. */
    private void fill(long m, Arc window, Batch before, Batch here, Batch after) {
        long base = places.base(m);
        long next = base + places.laps.pitch();
        for (int w = 0; w < lap.length; w++) {
            long n = m - lap[w];
            if (!places.allows(n)) {
                continue;
            }
            long at = places.at(n);
            for (int i = start[w]; i < start[w + 1]; i++) {
                long first = at + runs.first(i);
                long last = at + runs.last(i);
                if (first >= window.low() && first <= window.high()) {
                    if (last > window.high()) {
                        last = at + places.laps.between(runs.first(i), window.high() - at).highest();
                    }
                    (first < base ? before : first < next ? here : after).add(first, last);
                }
            }
        }
    }

    /** Runs that begin in one lap. */
    private static final class Batch {
        private long[] first = new long[64];
        private long[] last = new long[64];
        private int size;
        /** How many have been taken away from the front. */
        private int taken;

        private void add(long from, long to) {
            if (size == first.length) {
                first = Arrays.copyOf(first, 2 * size);
                last = Arrays.copyOf(last, 2 * size);
            }
            first[size] = from;
            last[size++] = to;
        }

        private void sort(PairSort sort) {
            sort.sort(first, last, size);
        }

        /** Gives those that begin below a place to another. */
        private void moveTo(long below, Batch other) {
            for (; taken < size && first[taken] < below; taken++) {
                other.add(first[taken], last[taken]);
            }
        }

        private void emptyInto(LapSink sink, PairSort sort) {
            sort(sort);
            for (int i = 0; i < size; i++) {
                sink.run(first[i], last[i]);
            }
            size = 0;
        }
    }
}
