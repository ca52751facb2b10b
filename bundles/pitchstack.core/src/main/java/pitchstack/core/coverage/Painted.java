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
        int words = (size + Long.SIZE - 1) / Long.SIZE;
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
        int from = (int) Math.max(0, fromCell);
        int to = (int) Math.min(size, toCell);
        for (int word = from / Long.SIZE; word * Long.SIZE < to; word++) {
            int base = word * Long.SIZE;
            long wanted = -1L;
            wanted &= from > base ? -1L << from - base : -1L;
            wanted &= to < base + Long.SIZE ? ~(-1L << to - base) : -1L;
            long open = wanted & ~done[word];
            if (open != 0) {
                done[word] |= open;
                left -= Long.bitCount(open);
                fill(start + base, open, effort);
            }
        }
    }

    private void fill(int base, long bits, int effort) {
        long open = bits;
        while (open != 0) {
            int first = Long.numberOfTrailingZeros(open);
            int count = Long.numberOfTrailingZeros(~(open >>> first));
            for (int i = base + first; i < base + first + count; i++) {
                cells[i] = Math.min(cells[i], effort);
            }
            open = count + first >= Long.SIZE ? 0 : open & -1L << first + count;
        }
    }
}
