// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

/**
 * An index into a sorted array: equal slices of the value range, each with its first entry, so that a look-up starts
 * within a few entries of its end.
 */
final class Buckets {
    private final long[] sorted;
    private final int shift;
    /** The first entry of each slice; one more for the end. */
    private final int[] first;

    /** An index of an ascending array whose values differ by less than 2⁶³. */
    Buckets(long[] sorted) {
        this.sorted = sorted;
        long span = sorted.length == 0 ? 0 : sorted[sorted.length - 1] - sorted[0];
        int bits = 0;
        // About as many slices as entries.
        while (span >>> bits > 2L * sorted.length) {
            bits++;
        }
        this.shift = bits;
        this.first = new int[(int) (span >>> bits) + 2];
        int entry = 0;
        for (int slice = 0; slice < first.length; slice++) {
            while (entry < sorted.length && slice(sorted[entry]) < slice) {
                entry++;
            }
            first[slice] = entry;
        }
    }

    /** The first entry of at least a value that lies within the range of the array. */
    int firstAtLeast(long least) {
        int slice = slice(least);
        int low = first[slice];
        int high = first[slice + 1];
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (sorted[middle] < least) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private int slice(long value) {
        return (int) ((value - sorted[0]) >>> shift);
    }
}
