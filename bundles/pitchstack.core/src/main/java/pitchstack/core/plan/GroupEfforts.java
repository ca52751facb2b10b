// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.Arrays;

/**
 * What each different offset of the listed stages costs from one place at the least, and by which entry. Only for spaces
 * whose efforts are separable; see {@link SearchSpace#separable}.
 */
final class GroupEfforts {
    /** In place of an effort: the offset cannot be moved to. */
    static final long NO_WAY = Long.MAX_VALUE;
    /** Groups whose least effort is known at one look, as a power of two: a window holds about as many in long lists. */
    private static final int RUN_BITS = 4;

    final SearchSpace space;
    /** By group, in milliseconds, or {@link #NO_WAY}. */
    final long[] least;
    /** By group, the entry of least effort, then of the fewest stages over worn teeth, then of the smallest indices. */
    final int[] best;
    /** By run of groups, the least effort. */
    private final long[] runLeast;
    /** The least effort of all. */
    final long all;

    GroupEfforts(SearchSpace space, Moves moves) {
        this.space = space;
        Combinations list = space.list;
        this.least = new long[list.groups()];
        this.best = new int[list.groups()];
        this.runLeast = new long[(list.groups() >> RUN_BITS) + 1];
        Arrays.fill(runLeast, NO_WAY);
        long[][] efforts = moves.efforts();
        long lowest = NO_WAY;
        for (int g = 0; g < least.length; g++) {
            fill(g, list, efforts);
            runLeast[g >> RUN_BITS] = Math.min(runLeast[g >> RUN_BITS], least[g]);
            lowest = Math.min(lowest, least[g]);
        }
        this.all = lowest;
    }

    private void fill(int g, Combinations list, long[][] efforts) {
        long lowest = NO_WAY;
        int kept = -1;
        for (int k = list.start[g]; k < list.start[g + 1]; k++) {
            int entry = list.entry[k];
            long effort = list.effort(entry, efforts);
            if (effort >= 0 && (effort < lowest || effort == lowest && list.worn(entry) < list.worn(kept))) {
                lowest = effort;
                kept = entry;
            }
        }
        least[g] = lowest;
        best[g] = kept;
    }

    /** The first group of the next run. */
    static int nextRun(int group) {
        return (group >> RUN_BITS) + 1 << RUN_BITS;
    }

    /** Whether no group in the run of this one costs as little as given. */
    boolean isRunAbove(int group, long effort) {
        return runLeast[group >> RUN_BITS] > effort;
    }
}
