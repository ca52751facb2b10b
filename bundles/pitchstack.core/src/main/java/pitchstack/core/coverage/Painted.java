// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.Arrays;

/** The cells of a stretch that need no more paint, as bits. For one thread. */
final class Painted {
    private final int[] cells;
    private final int extra;
    private long[] done = new long[64];
    private int start;
    private int size;
    /** How many cells still need paint. */
    private int left;

    /**
     * @param cells the efforts, of which lesser ones are kept
     * @param extra what is added to every effort: cells with less are done before they are begun
     */
    Painted(int[] cells, int extra) {
        this.cells = cells;
        this.extra = extra;
    }

    /** Begins the cells from one up to but not including another; returns whether any needs paint. */
    boolean begin(int from, int to) {
        start = from;
        size = to - from;
        left = size;
        int words = size / Long.SIZE + 2;
        if (done.length < words) {
            done = new long[words];
        }
        Arrays.fill(done, 0, words, 0);
        for (int i = 0; extra > 0 && i < size; i++) {
            if (cells[start + i] < extra) {
                done[i / Long.SIZE] |= 1L << i;
                left--;
            }
        }
        return left > 0;
    }

    boolean isFull() {
        return left == 0;
    }

    /** Paints what needs it of some cells, counted from the first; they may reach beyond both ends. */
    void paint(long fromCell, long toCell, int effort) {
        int to = (int) Math.min(size, toCell);
        for (int from = (int) Math.max(0, fromCell); from < to; from += Long.SIZE) {
            int count = Math.min(Long.SIZE, to - from);
            int word = from / Long.SIZE;
            // The bits of these cells from two words, without a branch; a shift by a whole word must be two.
            long have = done[word] >>> from | done[word + 1] << 1 << ~from;
            long open = ~have & -1L >>> Long.SIZE - count;
            if (open != 0) {
                done[word] |= open << from;
                done[word + 1] |= open >>> 1 >>> ~from;
                left -= Long.bitCount(open);
                fill(start + from, open, effort);
            }
        }
    }

    private void fill(int base, long bits, int effort) {
        long open = bits;
        int at = base;
        while (open != 0) {
            int skipped = Long.numberOfTrailingZeros(open);
            int count = Long.numberOfTrailingZeros(~(open >>> skipped));
            at += skipped;
            for (int end = at + count; at < end; at++) {
                cells[at] = Math.min(cells[at], effort);
            }
            open = skipped + count >= Long.SIZE ? 0 : open >>> skipped + count;
        }
    }
}
