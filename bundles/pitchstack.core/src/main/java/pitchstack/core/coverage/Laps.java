// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.Arrays;

/**
 * The offsets of the fine stages in groups by lap: offset = lap · pitch + residue, the residue in [0, pitch). Sorted
 * offsets are sorted by lap and then by residue, so that a group is a slice of the list. Never changed.
 */
final class Laps {
    /** Entries of which only the widest spacing is looked at while all of them are one run. */
    private static final int BLOCK = 64;

    private final OffsetSet set;
    private final long pitch;
    /** The lap of each group, ascending. */
    private final long[] lap;
    /** The first entry of each group; one more for the end. */
    private final int[] start;
    /** By entry, the sum of the figures of the entries before; one more for the end. */
    private final long[] before;
    /** By block, the widest spacing from any of its entries to the entry before, in the same group or not. */
    private final long[] widest;

    /** The groups of a set that is not empty. */
    Laps(OffsetSet set, long pitch) {
        this.set = set;
        this.pitch = pitch;
        long[] laps = new long[set.size()];
        int[] starts = new int[set.size() + 1];
        int groups = 0;
        for (int i = 0; i < set.size(); i++) {
            // A division only where a group begins.
            if (groups == 0 || set.offset(i) - laps[groups - 1] * pitch >= pitch) {
                laps[groups] = Math.floorDiv(set.offset(i), pitch);
                starts[groups++] = i;
            }
        }
        starts[groups] = set.size();
        this.lap = Arrays.copyOf(laps, groups);
        this.start = Arrays.copyOf(starts, groups + 1);
        this.before = new long[set.size() + 1];
        for (int i = 0; i < set.size(); i++) {
            before[i + 1] = before[i] + set.figure(i);
        }
        this.widest = new long[set.size() / BLOCK];
        for (int b = 0; b < widest.length; b++) {
            for (int i = Math.max(1, b * BLOCK); i < (b + 1) * BLOCK; i++) {
                widest[b] = Math.max(widest[b], set.offset(i) - set.offset(i - 1));
            }
        }
    }

    int groups() {
        return lap.length;
    }

    long pitch() {
        return pitch;
    }

    /** The smallest offset. */
    long lowest() {
        return set.offset(0);
    }

    /** The largest offset. */
    long highest() {
        return set.offset(set.size() - 1);
    }

    /** The sum of the figures of the offsets between two bounds, both included: the number of ways to them. */
    long sum(long low, long high) {
        return low > high ? 0 : before[set.firstAtLeast(high + 1)] - before[set.firstAtLeast(low)];
    }

    long lowestLap() {
        return lap[0];
    }

    long highestLap() {
        return lap[lap.length - 1];
    }

    long lap(int group) {
        return lap[group];
    }

    /** The first group of at least a lap, or their number. */
    int firstFrom(long least) {
        int found = Arrays.binarySearch(lap, least);
        return found < 0 ? -found - 1 : found;
    }

    /** The first entry of a group; of one more than there are, the number of entries. */
    int firstEntry(int group) {
        return start[group];
    }

    /** The first entry of a group of at least a residue, or its end. */
    int entryFrom(int group, long residue) {
        return Math.max(start[group], Math.min(start[group + 1], set.firstAtLeast(lap[group] * pitch + residue)));
    }

    long residue(int group, int entry) {
        return set.offset(entry) - lap[group] * pitch;
    }

    /** The lap of an entry. */
    long lapOf(int entry) {
        return Math.floorDiv(set.offset(entry), pitch);
    }

    long figure(int entry) {
        return set.figure(entry);
    }

    /** The runs of all offsets, by offset and not by residue: no spacing within a run is wider than {@code join}. */
    Spans together(long join) {
        return runs(0L, 0, set.size(), join);
    }

    /** The offsets of some at or above one and at or below another, as one run; empty where there is none. */
    Spans between(long low, long high) {
        int from = set.firstAtLeast(low);
        int to = high == Long.MAX_VALUE ? set.size() : set.firstAtLeast(high + 1);
        return from < to ? Spans.of(set.offset(from), set.offset(to - 1)) : Spans.NONE;
    }

    /** The runs of residues of one group: no spacing within a run is wider than {@code join}. */
    Spans runs(int group, long join) {
        return runs(group, start[group], start[group + 1], join);
    }

    /** The same for the residues between two bounds, both included. */
    Spans runs(int group, long join, long low, long high) {
        long base = lap[group] * pitch;
        int from = low <= 0 ? start[group] : Math.max(start[group], set.firstAtLeast(base + low));
        int to = high >= pitch ? start[group + 1] : Math.min(start[group + 1], set.firstAtLeast(base + high + 1));
        return from < to ? runs(group, from, to, join) : Spans.NONE;
    }

    private Spans runs(int group, int from, int to, long join) {
        return runs(lap[group] * pitch, from, to, join);
    }

    /** The runs of some entries, counted from a base. */
    private Spans runs(long base, int from, int to, long join) {
        SpansBuilder runs = new SpansBuilder(join, Integer.MAX_VALUE);
        long first = set.offset(from);
        int i = from + 1;
        while (i < to) {
            if (i % BLOCK == 0 && i + BLOCK <= to && widest[i / BLOCK] <= join) {
                i += BLOCK;
            } else {
                if (set.offset(i) - set.offset(i - 1) > join) {
                    runs.add(first - base, set.offset(i - 1) - base);
                    first = set.offset(i);
                }
                i++;
            }
        }
        runs.add(first - base, set.offset(to - 1) - base);
        return runs.build();
    }
}
