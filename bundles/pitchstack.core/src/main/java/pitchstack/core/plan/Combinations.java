// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.Arrays;
import pitchstack.core.stack.Wear;

/**
 * Every way to set the stages of some blocks, sorted by the offset it gives. Equal offsets are one group: group g has
 * offset {@code offset[g]} and the entries from {@code start[g]} to before {@code start[g + 1]}, in the order of their
 * indices. An entry is one number that holds a setting of each block.
 */
final class Combinations {
    /** Lowest first. */
    final Block[] blocks;
    /** Ascending, each once. */
    final long[] offset;
    final int[] start;
    final int[] entry;
    /** Divides the difference of any two offsets; 0 where there is but one. */
    final long step;
    private final int[] shift;
    private final int[] mask;
    private final Buckets buckets;

    /** Takes over the arrays. */
    Combinations(Block[] blocks, long[] offset, int[] start, int[] entry, long step) {
        this.step = step;
        this.blocks = blocks;
        this.offset = offset;
        this.start = start;
        this.entry = entry;
        this.shift = new int[blocks.length];
        this.mask = new int[blocks.length];
        for (int b = blocks.length - 1, bits = 0; b >= 0; b--) {
            shift[b] = bits;
            mask[b] = (1 << bits(blocks[b])) - 1;
            bits += bits(blocks[b]);
        }
        this.buckets = new Buckets(offset);
    }

    /** How many ways there are. */
    int size() {
        return entry.length;
    }

    /** How many different offsets there are. */
    int groups() {
        return offset.length;
    }

    /** The smallest offset; there must be an entry. */
    long lowest() {
        return offset[0];
    }

    /** The largest offset; there must be an entry. */
    long highest() {
        return offset[offset.length - 1];
    }

    /** The first group with at least this offset, or the number of groups if there is none. */
    int firstAtLeast(long least) {
        if (groups() == 0 || least <= lowest()) {
            return 0;
        }
        return least > highest() ? groups() : buckets.firstAtLeast(least);
    }

    /** The last group with at most this offset, or −1 if there is none. */
    int lastAtMost(long most) {
        return firstAtLeast(most + 1) - 1;
    }

    /** How many bits of an entry a block takes. */
    static int bits(Block block) {
        return Integer.SIZE - Integer.numberOfLeadingZeros(Math.max(0, block.size() - 1));
    }

    /** The setting of a block in an entry. */
    int setting(int code, int block) {
        return code >>> shift[block] & mask[block];
    }

    /** Copies the indices of an entry to their places among all stages of the axis. */
    void copyIndices(int code, int[] indices) {
        for (int b = 0; b < blocks.length; b++) {
            blocks[b].copyIndices(setting(code, b), indices);
        }
    }

    /** How many stages of an entry stand over worn teeth; there must be no barred ones. */
    int worn(int code) {
        int worn = 0;
        for (int b = 0; b < blocks.length; b++) {
            worn += blocks[b].worn[setting(code, b)];
        }
        return worn;
    }

    /** The effort of moving the listed stages to an entry, at the least, or {@link BlockMoves#NO_WAY}. */
    long effort(int code, BlockMoves[] moves) {
        long sum = 0;
        for (int b = 0; b < moves.length; b++) {
            long effort = moves[b].effort(setting(code, b));
            if (effort < 0) {
                return BlockMoves.NO_WAY;
            }
            sum += effort;
        }
        return sum;
    }

    /**
     * The same where the efforts of every block are known.
     *
     * @param efforts by block and setting
     */
    long effort(int code, long[][] efforts) {
        // Written out for the usual numbers of blocks: this is the innermost loop of a search.
        return switch (efforts.length) {
            case 1 -> efforts[0][code];
            case 2 -> sum(efforts[0][code >>> shift[0]], efforts[1][code & mask[1]]);
            case 3 -> sum(sum(efforts[0][code >>> shift[0]], efforts[1][code >>> shift[1] & mask[1]]),
                    efforts[2][code & mask[2]]);
            default -> {
                long sum = 0;
                for (int b = 0; b < efforts.length; b++) {
                    sum = sum(sum, efforts[b][code >>> shift[b] & mask[b]]);
                }
                yield sum;
            }
        };
    }

    private static long sum(long one, long other) {
        return (one | other) < 0 ? BlockMoves.NO_WAY : one + other;
    }

    /** The entries over teeth no worse than this; the same list where that is all of them. */
    Combinations noWorseThan(Wear worst) {
        if (Arrays.stream(blocks).allMatch(block -> block.allowsAll(worst))) {
            return this;
        }
        long[] newOffset = new long[groups()];
        int[] newStart = new int[groups() + 1];
        int[] newEntry = new int[size()];
        int groups = 0;
        int kept = 0;
        for (int g = 0; g < groups(); g++) {
            newStart[groups] = kept;
            for (int k = start[g]; k < start[g + 1]; k++) {
                if (allows(entry[k], worst)) {
                    newEntry[kept++] = entry[k];
                }
            }
            if (kept > newStart[groups]) {
                newOffset[groups++] = offset[g];
            }
        }
        newStart[groups] = kept;
        return kept == size() ? this : new Combinations(blocks, Arrays.copyOf(newOffset, groups),
                Arrays.copyOf(newStart, groups + 1), Arrays.copyOf(newEntry, kept), step);
    }

    private boolean allows(int code, Wear worst) {
        for (int b = 0; b < blocks.length; b++) {
            if (!blocks[b].allows(setting(code, b), worst)) {
                return false;
            }
        }
        return true;
    }
}
