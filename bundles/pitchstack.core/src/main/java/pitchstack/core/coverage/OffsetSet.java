// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.Arrays;
import java.util.concurrent.CancellationException;
import pitchstack.core.plan.Progress;

/**
 * The different offsets that some stages can give, ascending, and a figure for each. Stages whose pitches have a common
 * measure give far fewer offsets than they have combinations. Never changed.
 */
final class OffsetSet {
    private final Tally tally;
    private final long[] offset;
    private final long[] figure;
    private final int size;

    private OffsetSet(Tally tally, long[] offset, long[] figure, int size) {
        this.tally = tally;
        this.offset = offset.length == size ? offset : Arrays.copyOf(offset, size);
        this.figure = figure.length == size ? figure : Arrays.copyOf(figure, size);
        this.size = size;
    }

    /** The set of some ascending offsets, where equal ones count as ways to one. */
    static OffsetSet ofSorted(Tally tally, long[] sorted, long[] figures) {
        long[] offset = new long[sorted.length];
        long[] figure = new long[sorted.length];
        int size = 0;
        for (int i = 0; i < sorted.length; i++) {
            if (size > 0 && offset[size - 1] == sorted[i]) {
                figure[size - 1] = tally.either(figure[size - 1], figures[i]);
            } else {
                offset[size] = sorted[i];
                figure[size++] = figures[i];
            }
        }
        return new OffsetSet(tally, offset, figure, size);
    }

    int size() {
        return size;
    }

    long offset(int entry) {
        return offset[entry];
    }

    long figure(int entry) {
        return figure[entry];
    }

    /** The first entry of at least an offset, or the size. */
    int firstAtLeast(long least) {
        int found = Arrays.binarySearch(offset, least);
        return found < 0 ? -found - 1 : found;
    }

    /**
     * All sums of an offset of this set and one of another.
     *
     * @param most the most entries
     * @throws TooMuch if there are more, or far too many pairs to try
     * @throws CancellationException if cancelled
     */
    OffsetSet plus(OffsetSet other, int most, Progress progress) {
        OffsetSet small = size <= other.size ? this : other;
        OffsetSet large = size <= other.size ? other : this;
        if (small.size == 0) {
            return small;
        }
        // Equal sums fall together early, so that many more pairs than entries can be tried; but not without end.
        if ((long) small.size * large.size > 64L * most) {
            throw new TooMuch();
        }
        return large.shifted(small, 0, small.size, most, progress);
    }

    /** This set shifted by each offset of some entries of another, halved until one is left. */
    private OffsetSet shifted(OffsetSet by, int from, int to, int most, Progress progress) {
        if (to - from > 1) {
            int middle = (from + to) >>> 1;
            OffsetSet low = shifted(by, from, middle, most, progress);
            return low.or(shifted(by, middle, to, most, progress), most);
        }
        if (progress.isCancelled()) {
            throw new CancellationException();
        }
        long[] sums = new long[size];
        long[] figures = new long[size];
        for (int i = 0; i < size; i++) {
            sums[i] = offset[i] + by.offset[from];
            figures[i] = tally.both(figure[i], by.figure[from]);
        }
        return new OffsetSet(tally, sums, figures, size);
    }

    private OffsetSet or(OffsetSet other, int most) {
        long[] sums = new long[size + other.size];
        long[] figures = new long[sums.length];
        int i = 0;
        int k = 0;
        int n = 0;
        while (i < size || k < other.size) {
            long one = i < size ? offset[i] : Long.MAX_VALUE;
            long two = k < other.size ? other.offset[k] : Long.MAX_VALUE;
            sums[n] = Math.min(one, two);
            figures[n++] = one == two ? tally.either(figure[i++], other.figure[k++])
                    : one < two ? figure[i++] : other.figure[k++];
        }
        if (n > most) {
            throw new TooMuch();
        }
        return new OffsetSet(tally, sums, figures, n);
    }
}
