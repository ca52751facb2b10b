// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.Arrays;

/**
 * The least effort within a tolerance of each residue: constant on pieces, of which each goes up to the start of the
 * next. Before the first piece and on the last there is none. Never changed.
 */
final class EffortPieces {
    /** The effort where nothing lies within the tolerance. */
    static final long NONE = Long.MAX_VALUE;
    private static final EffortPieces EMPTY = new EffortPieces(new long[0], new long[0], 0);

    private final long[] start;
    private final long[] effort;
    private final int size;

    private EffortPieces(long[] start, long[] effort, int size) {
        this.start = Arrays.copyOf(start, size);
        this.effort = Arrays.copyOf(effort, size);
        this.size = size;
    }

    /**
     * That of the offsets of one group whose residues lie between two bounds, both included. The tolerance slides over
     * the residues; of those in it, a list keeps the ones that no later one undercuts, so that the first is the least.
     */
    static EffortPieces around(Laps laps, int group, long low, long high, long tolerance) {
        int from = laps.entryFrom(group, low);
        int to = laps.entryFrom(group, high + 1);
        int[] queue = new int[Math.max(0, to - from)];
        int head = 0;
        int tail = 0;
        int enter = from;
        int leave = from;
        Collector pieces = new Collector(2 * (to - from) + 1);
        while (leave < to) {
            long entering = enter < to ? laps.residue(group, enter) - tolerance : Long.MAX_VALUE;
            long at = Math.min(entering, laps.residue(group, leave) + tolerance + 1);
            for (; enter < to && laps.residue(group, enter) - tolerance == at; enter++) {
                while (tail > head && laps.figure(queue[tail - 1]) >= laps.figure(enter)) {
                    tail--;
                }
                queue[tail++] = enter;
            }
            for (; leave < to && laps.residue(group, leave) + tolerance + 1 == at; leave++) {
                head += head < tail && queue[head] == leave ? 1 : 0;
            }
            pieces.add(at, head < tail ? laps.figure(queue[head]) : NONE);
        }
        return pieces.build();
    }

    int size() {
        return size;
    }

    long start(int i) {
        return start[i];
    }

    long effort(int i) {
        return effort[i];
    }

    /** The lesser of both everywhere, with something added to each. */
    EffortPieces least(long add, EffortPieces other, long otherAdd) {
        Collector both = new Collector(size + other.size);
        int i = 0;
        int k = 0;
        while (i < size || k < other.size) {
            long at = Math.min(i < size ? start[i] : Long.MAX_VALUE, k < other.size ? other.start[k] : Long.MAX_VALUE);
            i += i < size && start[i] == at ? 1 : 0;
            k += k < other.size && other.start[k] == at ? 1 : 0;
            both.add(at, Math.min(before(i, add), other.before(k, otherAdd)));
        }
        return both.build();
    }

    private long before(int piece, long add) {
        return piece == 0 || effort[piece - 1] == NONE ? NONE : effort[piece - 1] + add;
    }

    /** Nowhere any effort. */
    static EffortPieces none() {
        return EMPTY;
    }

    /** Joins pieces of one effort. */
    private static final class Collector {
        private final long[] start;
        private final long[] effort;
        private int size;

        private Collector(int room) {
            start = new long[room];
            effort = new long[room];
        }

        private void add(long at, long value) {
            if (value != (size == 0 ? NONE : effort[size - 1])) {
                start[size] = at;
                effort[size++] = value;
            }
        }

        private EffortPieces build() {
            return new EffortPieces(start, effort, size);
        }
    }
}
