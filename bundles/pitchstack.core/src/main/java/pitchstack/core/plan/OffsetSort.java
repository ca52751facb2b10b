// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.Arrays;

/**
 * Combines the settings of blocks and sorts them by the offset they give. Offsets are counted from the smallest in the
 * greatest unit that divides them all; where that leaves few numbers, as pitches with a common measure do, one pass over
 * counters sorts them.
 */
final class OffsetSort {
    /** Counters for each entry at the most. */
    private static final int COUNTERS_PER_ENTRY = 4;

    private final Block[] blocks;
    private final int entries;
    private final long lowest;
    /** Divides all differences, 0 where there is one offset. */
    private final long common;
    private final long unit;
    /** By block and setting, the offset above the block's smallest in units. */
    private final long[][] steps;
    private final int[] code;
    private int filled;

    /**
     * @param blocks lowest first
     * @param entries the product of their sizes
     */
    OffsetSort(Block[] blocks, int entries) {
        this.blocks = blocks;
        this.entries = entries;
        this.code = new int[entries];
        long low = 0;
        long step = 0;
        for (Block block : blocks) {
            long least = Arrays.stream(block.offset).min().orElse(0);
            low += least;
            for (long offset : block.offset) {
                step = gcd(step, offset - least);
            }
        }
        this.lowest = low;
        this.common = step;
        this.unit = Math.max(1, step);
        this.steps = new long[blocks.length][];
        for (int b = 0; b < blocks.length; b++) {
            long least = Arrays.stream(blocks[b].offset).min().orElse(0);
            steps[b] = Arrays.stream(blocks[b].offset).map(offset -> (offset - least) / unit).toArray();
        }
    }

    /** The greatest number that divides both; the other one where one is 0. */
    static long gcd(long a, long b) {
        while (b != 0) {
            long rest = a % b;
            a = b;
            b = rest;
        }
        return a;
    }

    Combinations sorted() {
        if (entries == 0) {
            return new Combinations(blocks, new long[0], new int[1], new int[0], common);
        }
        long most = Arrays.stream(steps).mapToLong(block -> Arrays.stream(block).max().orElse(0)).sum();
        return most < Math.max(1024L, (long) COUNTERS_PER_ENTRY * entries) ? counted((int) most) : radixSorted();
    }

    private Combinations counted(int most) {
        int[] key = new int[entries];
        visit(0, 0, 0, (k, codeOfIt, step) -> {
            code[k] = codeOfIt;
            key[k] = (int) step;
        });
        int[] place = new int[most + 2];
        for (int k : key) {
            place[k + 1]++;
        }
        int groups = 0;
        for (int k = 0; k <= most; k++) {
            groups += place[k + 1] > 0 ? 1 : 0;
        }
        long[] offset = new long[groups];
        int[] start = new int[groups + 1];
        int g = 0;
        for (int k = 0; k <= most; k++) {
            boolean met = place[k + 1] > 0;
            place[k + 1] += place[k];
            if (met) {
                offset[g] = lowest + k * unit;
                start[++g] = place[k + 1];
            }
        }
        int[] entry = new int[entries];
        for (int k = 0; k < entries; k++) {
            entry[place[key[k]]++] = code[k];
        }
        return new Combinations(blocks, offset, start, entry, common);
    }

    private Combinations radixSorted() {
        long[] key = new long[entries];
        visit(0, 0, 0, (k, codeOfIt, step) -> {
            code[k] = codeOfIt;
            key[k] = step;
        });
        int[] order = RadixSort.order(key);
        long[] offset = new long[entries];
        int[] start = new int[entries + 1];
        int[] entry = new int[entries];
        int groups = 0;
        for (int k = 0; k < entries; k++) {
            entry[k] = code[order[k]];
            if (k == 0 || key[order[k]] != key[order[k - 1]]) {
                start[groups] = k;
                offset[groups++] = lowest + key[order[k]] * unit;
            }
        }
        start[groups] = entries;
        return groups == entries ? new Combinations(blocks, offset, start, entry, common)
                : new Combinations(blocks, Arrays.copyOf(offset, groups), Arrays.copyOf(start, groups + 1), entry, common);
    }

    private interface Sink {
        void take(int number, int code, long step);
    }

    private void visit(int block, int before, long sum, Sink sink) {
        if (block == blocks.length) {
            sink.take(filled++, before, sum);
            return;
        }
        int bits = Combinations.bits(blocks[block]);
        for (int s = 0; s < steps[block].length; s++) {
            visit(block + 1, before << bits | s, sum + steps[block][s], sink);
        }
    }
}
