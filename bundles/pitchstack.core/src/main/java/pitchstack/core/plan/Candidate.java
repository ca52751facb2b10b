// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.Arrays;
import java.util.Comparator;

/**
 * A setting that a search has found.
 *
 * @param place its place, not brought back into one turn
 * @param error place minus the center of the window it was found in
 * @param effort of the move to it, in milliseconds
 * @param worn how many of its stages stand over worn teeth
 * @param indices one a stage; not to be changed
 */
record Candidate(long place, long error, long effort, int worn, int[] indices) {
    /** Effort, then |error|, then fewer worn stages, then below the target first, then the smaller indices. */
    static final Comparator<Candidate> BY_EFFORT = Comparator.comparingLong(Candidate::effort)
            .thenComparingLong(Candidate::distance).thenComparingInt(Candidate::worn)
            .thenComparingLong(Candidate::error).thenComparing(Candidate::indices, Arrays::compare);
    /** |error|, then effort, then fewer worn stages, then the smaller indices: for settings on one side. */
    static final Comparator<Candidate> BY_NEARNESS = Comparator.comparingLong(Candidate::distance)
            .thenComparingLong(Candidate::effort).thenComparingInt(Candidate::worn)
            .thenComparing(Candidate::indices, Arrays::compare);

    long distance() {
        return Math.abs(error);
    }
}
