// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.Arrays;

/**
 * The offsets of a {@link GroupEfforts} by where they lie within a lap, a pitch of the coarse stage: all that can meet a
 * narrow window with any index of the coarse stage are neighbours. Runs of neighbours know what the best of them costs
 * together with the coarse stage, so that most are passed over at one look.
 */
final class LapOrder {
    /** Neighbours in a run, as a power of two. */
    private static final int RUN_BITS = 4;
    /** Entries looked at for each index of the coarse stage that a walk would look at: some nanoseconds either way. */
    private static final double ENTRIES_PER_LAP = 48;
    /** Sums of efforts below it are far from overflowing. */
    private static final double MOST_MS = 1L << 60;
    /** Above every effort that is safe, and as far from overflowing. */
    private static final long NONE_YET = 1L << 62;

    /** By entry, how far the offset lies into its lap, ascending. */
    final long[] rest;
    /** By entry, the lap. */
    final int[] lap;
    /** By entry, the group. */
    final int[] group;
    /** By entry, the least effort, or {@link GroupEfforts#NO_WAY}. */
    final long[] least;
    /** By run, the least effort less what the laps of the offset are worth while the coarse stage moves forward. */
    private final long[] forward;
    private final long[] back;
    private final Buckets buckets;
    private final int laps;
    /** The lap of the smallest offset and of the largest. */
    final int lowestLap;
    final int highestLap;

    /** An order; see {@link #isSafe}. */
    LapOrder(GroupEfforts efforts, long pitch, long perToothMs) {
        long[] offset = efforts.space.list.offset;
        long[] rests = Arrays.stream(offset).map(y -> Math.floorMod(y, pitch)).toArray();
        this.group = RadixSort.order(rests);
        int size = group.length;
        this.rest = new long[size];
        this.lap = new int[size];
        this.least = new long[size];
        this.forward = new long[(size >> RUN_BITS) + 1];
        this.back = new long[forward.length];
        Arrays.fill(forward, Long.MAX_VALUE);
        Arrays.fill(back, Long.MAX_VALUE);
        for (int i = 0; i < size; i++) {
            rest[i] = rests[group[i]];
            lap[i] = (int) Math.floorDiv(offset[group[i]], pitch);
            least[i] = efforts.least[group[i]];
            if (least[i] != GroupEfforts.NO_WAY) {
                int run = i >> RUN_BITS;
                forward[run] = Math.min(forward[run], least[i] - perToothMs * lap[i]);
                back[run] = Math.min(back[run], least[i] + perToothMs * lap[i]);
            }
        }
        this.buckets = new Buckets(rest);
        this.lowestLap = (int) Math.floorDiv(offset[0], pitch);
        this.highestLap = (int) Math.floorDiv(offset[size - 1], pitch);
        this.laps = highestLap - lowestLap + 1;
    }

    /** Whether laps and efforts are small enough for plain sums. */
    static boolean isSafe(GroupEfforts efforts, StageTable coarse, StageMoves stage) {
        long[] offset = efforts.space.list.offset;
        if (offset.length == 0) {
            return false;
        }
        double laps = Math.max(Math.abs((double) offset[0]), Math.abs((double) offset[offset.length - 1])) / coarse.pitch();
        double teeth = 2 * laps + Math.abs((double) coarse.first) + Math.abs((double) coarse.last) + Math.abs((double) stage.from);
        return laps < Integer.MAX_VALUE / 2 && stage.perToothMs * teeth + stage.forwardMs + stage.backMs < MOST_MS
                && Arrays.stream(efforts.least).allMatch(ms -> ms == GroupEfforts.NO_WAY || ms < MOST_MS);
    }

    /** Whether a window of a width, below a pitch, holds so few entries that looking at them is faster than walking. */
    boolean suits(long width, long pitch) {
        return width < pitch && (double) rest.length * width / pitch <= ENTRIES_PER_LAP * laps;
    }

    /** The first entry at least so far into its lap, or the number of entries. */
    int firstAtLeast(long into) {
        if (into <= rest[0]) {
            return 0;
        }
        return into > rest[rest.length - 1] ? rest.length : buckets.firstAtLeast(into);
    }

    /** The first entry of the next run. */
    static int nextRun(int entry) {
        return (entry >> RUN_BITS) + 1 << RUN_BITS;
    }

    /**
     * Whether every entry in the run of this one costs more than given.
     *
     * @param forwardMs what a move of the coarse stage forward to lap 0 costs, or less
     * @param backMs what one back costs, or less
     */
    boolean isRunAbove(int entry, long forwardMs, long backMs, long effort) {
        int run = entry >> RUN_BITS;
        long limit = Math.min(effort, NONE_YET);
        return forward[run] > limit - forwardMs || back[run] > limit - backMs;
    }
}
