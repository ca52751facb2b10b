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
    static final Comparator<Candidate> BY_EFFORT = Candidate::compareEffort;
    /** |error|, then effort, then fewer worn stages, then the smaller indices: for settings on one side. */
    static final Comparator<Candidate> BY_NEARNESS = Candidate::compareNearness;

    // Written out, since every search compares many: chained comparators take several times as long.
    private static int compareEffort(Candidate one, Candidate other) {
        if (one.effort != other.effort) {
            return Long.compare(one.effort, other.effort);
        }
        if (one.distance() != other.distance()) {
            return Long.compare(one.distance(), other.distance());
        }
        if (one.worn != other.worn) {
            return Integer.compare(one.worn, other.worn);
        }
        return one.error != other.error ? Long.compare(one.error, other.error) : Arrays.compare(one.indices, other.indices);
    }

    private static int compareNearness(Candidate one, Candidate other) {
        if (one.distance() != other.distance()) {
            return Long.compare(one.distance(), other.distance());
        }
        if (one.effort != other.effort) {
            return Long.compare(one.effort, other.effort);
        }
        return one.worn != other.worn ? Integer.compare(one.worn, other.worn) : Arrays.compare(one.indices, other.indices);
    }

    long distance() {
        return Math.abs(error);
    }
}
