// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.PriorityQueue;

/** The best so many candidates by effort. */
final class Ranking {
    private final int places;
    private final PriorityQueue<Candidate> worstFirst = new PriorityQueue<>(Candidate.BY_EFFORT.reversed());
    /** What a candidate may cost and still enter. */
    private long effortLimit = Long.MAX_VALUE;
    /** How far off one at that limit may be and still enter. */
    private long distanceLimit = Long.MAX_VALUE;

    /** A ranking of at least one place. */
    Ranking(int places) {
        this.places = places;
    }

    /** The most effort with which a candidate can still enter. */
    long effortLimit() {
        return effortLimit;
    }

    /** The largest |error| with which a candidate of at least this effort can still enter. */
    long distanceLimit(long effort) {
        return effort < effortLimit ? Long.MAX_VALUE : distanceLimit;
    }

    boolean isEmpty() {
        return worstFirst.isEmpty();
    }

    /** Enters a candidate if it is among the best. */
    void offer(Candidate candidate) {
        if (worstFirst.size() == places) {
            if (Candidate.BY_EFFORT.compare(candidate, worstFirst.peek()) > 0) {
                return;
            }
            worstFirst.poll();
        }
        worstFirst.add(candidate);
        if (worstFirst.size() == places) {
            effortLimit = worstFirst.peek().effort();
            distanceLimit = worstFirst.peek().distance();
        }
    }

    /** The candidates, best first. */
    List<Candidate> inOrder() {
        List<Candidate> list = new ArrayList<>(worstFirst);
        list.sort(Candidate.BY_EFFORT);
        return list;
    }
}
