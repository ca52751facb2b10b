// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.stack;

import java.util.Arrays;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Measured errors of single indices: how far the body stands from where its pitch alone would put it, positive towards
 * higher positions. An index without an entry has the error 0. Two with the same errors are equal.
 */
public final class IndexErrors {
    /** No index has an error. */
    public static final IndexErrors NONE = new IndexErrors(0, new long[0]);

    /** The smallest index with an entry. */
    private final int first;
    /** The errors from {@link #first} on. */
    private final long[] errors;

    private IndexErrors(int first, long[] errors) {
        this.first = first;
        this.errors = errors;
    }

    /**
     * Errors by index.
     *
     * @param byIndex counts of the axis's scale; indices whose range spans at most {@link Integer#MAX_VALUE}
     * @throws ArithmeticException if the range is longer
     */
    public static IndexErrors of(SortedMap<Integer, Long> byIndex) {
        SortedMap<Integer, Long> entries = new TreeMap<>(byIndex);
        entries.values().removeIf(error -> error == 0);
        if (entries.isEmpty()) {
            return NONE;
        }
        int first = entries.firstKey();
        long[] errors = new long[Math.incrementExact(Math.subtractExact(entries.lastKey(), first))];
        entries.forEach((index, error) -> errors[index - first] = error);
        return new IndexErrors(first, errors);
    }

    /** Whether every index has the error 0. */
    public boolean isNone() {
        return errors.length == 0;
    }

    /** The error at an index, in counts. */
    public long at(int index) {
        long entry = (long) index - first;
        return entry < 0 || entry >= errors.length ? 0 : errors[(int) entry];
    }

    /** The largest error by amount, in counts, at least 0; {@link Long#MAX_VALUE} for one that has no positive twin. */
    public long largest() {
        return Arrays.stream(errors).map(error -> error == Long.MIN_VALUE ? Long.MAX_VALUE : Math.abs(error)).max()
                .orElse(0);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof IndexErrors that && first == that.first && Arrays.equals(errors, that.errors);
    }

    @Override
    public int hashCode() {
        return 31 * first + Arrays.hashCode(errors);
    }

    @Override
    public String toString() {
        return "IndexErrors[first=" + first + ", errors=" + Arrays.toString(errors) + "]";
    }
}
