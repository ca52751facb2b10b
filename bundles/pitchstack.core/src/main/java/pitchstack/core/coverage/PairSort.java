// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.Arrays;

/**
 * Sorts pairs of numbers by the first: shares them out evenly between the smallest and the largest, as often as
 * needed. Takes time in proportion to the pairs where they lie evenly, as offsets within a lap do. For one thread.
 */
final class PairSort {
    /** So few are put in order one by one. */
    private static final int FEW = 24;

    private long[] spareKey = new long[0];
    private long[] spareValue = new long[0];
    private int[] end = new int[0];

    /** Sorts the first pairs, by key. */
    void sort(long[] key, long[] value, int size) {
        if (spareKey.length < size) {
            spareKey = new long[key.length];
            spareValue = new long[key.length];
        }
        sort(key, value, 0, size);
    }

    private void sort(long[] key, long[] value, int from, int to) {
        if (to - from <= FEW || !spread(key, value, from, to)) {
            insert(key, value, from, to);
        }
    }

    /** Shares out the pairs; returns whether they are sorted then. Equal ones are sorted as they are. */
    private boolean spread(long[] key, long[] value, int from, int to) {
        long least = Long.MAX_VALUE;
        long most = Long.MIN_VALUE;
        for (int i = from; i < to; i++) {
            least = Math.min(least, key[i]);
            most = Math.max(most, key[i]);
        }
        if (least == most) {
            return true;
        }
        int shares = (to - from) / 2;
        double perShare = (shares - 1) / (double) (most - least);
        if (end.length < shares + 1) {
            end = new int[shares + 1];
        }
        Arrays.fill(end, 0, shares + 1, 0);
        for (int i = from; i < to; i++) {
            end[share(key[i], least, perShare)]++;
        }
        int sum = from;
        for (int s = 0; s < shares; s++) {
            sum += end[s];
            end[s] = sum;
        }
        for (int i = to - 1; i >= from; i--) {
            int at = --end[share(key[i], least, perShare)];
            spareKey[at] = key[i];
            spareValue[at] = value[i];
        }
        System.arraycopy(spareKey, from, key, from, to - from);
        System.arraycopy(spareValue, from, value, from, to - from);
        return sortShares(key, value, from, to, least, perShare);
    }

    /** Sorts crowded shares on their own; false where what is left is a matter of a few steps. */
    private boolean sortShares(long[] key, long[] value, int from, int to, long least, double perShare) {
        int start = from;
        for (int i = from + 1; i <= to; i++) {
            if (i == to || share(key[i], least, perShare) != share(key[start], least, perShare)) {
                if (i - start > FEW) {
                    sort(key, value, start, i);
                }
                start = i;
            }
        }
        return false;
    }

    private static int share(long key, long least, double perShare) {
        return (int) ((key - least) * perShare);
    }

    private static void insert(long[] key, long[] value, int from, int to) {
        for (int i = from + 1; i < to; i++) {
            long k = key[i];
            long v = value[i];
            int j = i;
            for (; j > from && key[j - 1] > k; j--) {
                key[j] = key[j - 1];
                value[j] = value[j - 1];
            }
            key[j] = k;
            value[j] = v;
        }
    }
}
