// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.Arrays;
import java.util.concurrent.CancellationException;
import pitchstack.core.plan.Progress;

/**
 * The different offsets that some stages can give, ascending, and in how many ways each comes about. Stages whose
 * pitches have a common measure give far fewer offsets than they have combinations. Never changed.
 */
final class OffsetSet {
    /** No stage: one way to give nothing. */
    static final OffsetSet ZERO = new OffsetSet(new long[1], new long[] {0, 1}, 1);
    /** No offset at all. */
    static final OffsetSet NONE = new OffsetSet(new long[0], new long[1], 0);

    private final long[] offset;
    /** By entry, in how many ways the entries before it come about; one more for the end. */
    private final long[] before;
    private final int size;

    private OffsetSet(long[] offset, long[] before, int size) {
        boolean exact = offset.length == size;
        this.offset = exact ? offset : Arrays.copyOf(offset, size);
        this.before = exact ? before : Arrays.copyOf(before, size + 1);
        this.size = size;
    }

    /** The set of some ascending offsets, each as often as there are ways to it. */
    static OffsetSet ofSorted(long[] sorted) {
        long[] offset = new long[sorted.length];
        long[] before = new long[sorted.length + 1];
        int size = 0;
        for (long one : sorted) {
            if (size == 0 || offset[size - 1] != one) {
                offset[size++] = one;
                before[size] = before[size - 1];
            }
            before[size]++;
        }
        return new OffsetSet(offset, before, size);
    }

    int size() {
        return size;
    }

    long offset(int entry) {
        return offset[entry];
    }

    /** In how many ways an offset between two bounds, both included, comes about. */
    long ways(long low, long high) {
        return low > high ? 0 : before[firstAtLeast(high + 1)] - before[firstAtLeast(low)];
    }

    private long ways(int entry) {
        return before[entry + 1] - before[entry];
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
            return NONE;
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
        long[] products = new long[size + 1];
        for (int i = 0; i < size; i++) {
            sums[i] = offset[i] + by.offset[from];
            products[i + 1] = before[i + 1] * by.ways(from);
        }
        return new OffsetSet(sums, products, size);
    }

    private OffsetSet or(OffsetSet other, int most) {
        long[] sums = new long[size + other.size];
        long[] counts = new long[sums.length + 1];
        int i = 0;
        int k = 0;
        int n = 0;
        while (i < size || k < other.size) {
            long one = i < size ? offset[i] : Long.MAX_VALUE;
            long two = k < other.size ? other.offset[k] : Long.MAX_VALUE;
            sums[n] = Math.min(one, two);
            counts[n + 1] = counts[n] + (one <= two ? ways(i++) : 0) + (two <= one ? other.ways(k++) : 0);
            n++;
        }
        if (n > most) {
            throw new TooMuch();
        }
        return new OffsetSet(sums, counts, n);
    }
}
