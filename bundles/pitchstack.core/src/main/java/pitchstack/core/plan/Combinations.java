// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import pitchstack.core.stack.Wear;

/**
 * Every way to set some of the stages, sorted by the offset it gives. Entry k has offset {@code offset[k]}, indices
 * {@code index[i][k]} for the i-th listed stage, and {@code worn[k]} stages over worn teeth.
 */
final class Combinations {
    /** Marks an entry over barred teeth in {@link #worn}. */
    static final byte BARRED = -1;

    /** The stages listed, lowest first. */
    final StageTable[] stages;
    /** Ascending. */
    final long[] offset;
    final int[][] index;
    final byte[] worn;
    private final Buckets buckets;

    /** Takes over arrays of one length, sorted by offset. */
    Combinations(StageTable[] stages, long[] offset, int[][] index, byte[] worn) {
        this.stages = stages;
        this.offset = offset;
        this.index = index;
        this.worn = worn;
        this.buckets = new Buckets(offset);
    }

    int size() {
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

    /** The first entry with at least this offset, or the size if there is none. */
    int firstAtLeast(long least) {
        if (size() == 0 || least <= lowest()) {
            return 0;
        }
        return least > highest() ? size() : buckets.firstAtLeast(least);
    }

    /** The last entry with at most this offset, or −1 if there is none. */
    int lastAtMost(long most) {
        return firstAtLeast(most + 1) - 1;
    }

    /** Copies the indices of an entry to their places among all stages of the axis. */
    void copyIndices(int entry, int[] indices) {
        for (int i = 0; i < stages.length; i++) {
            indices[stages[i].stage] = index[i][entry];
        }
    }

    /** The effort of moving the listed stages to an entry. */
    long effort(int entry, Moves moves) {
        long sum = 0;
        for (int i = 0; i < stages.length; i++) {
            sum += moves.stage(stages[i].stage).effort(index[i][entry]);
        }
        return sum;
    }

    /** The entries over teeth no worse than this; the same list where that is all of them. */
    Combinations noWorseThan(Wear worst) {
        int kept = 0;
        int[] which = new int[size()];
        for (int k = 0; k < size(); k++) {
            if (wear(k).compareTo(worst) <= 0) {
                which[kept++] = k;
            }
        }
        return kept == size() ? this : pick(stages, offset, index, worn, which, kept);
    }

    private Wear wear(int entry) {
        return worn[entry] == BARRED ? Wear.BARRED : worn[entry] == 0 ? Wear.CLEAN : Wear.WORN;
    }

    /** The list of the first {@code count} entries named, in that order, which must be by offset. */
    static Combinations pick(StageTable[] stages, long[] offset, int[][] index, byte[] worn, int[] which, int count) {
        long[] newOffset = new long[count];
        int[][] newIndex = new int[stages.length][count];
        byte[] newWorn = new byte[count];
        for (int k = 0; k < count; k++) {
            newOffset[k] = offset[which[k]];
            newWorn[k] = worn[which[k]];
            for (int i = 0; i < stages.length; i++) {
                newIndex[i][k] = index[i][which[k]];
            }
        }
        return new Combinations(stages, newOffset, newIndex, newWorn);
    }
}
