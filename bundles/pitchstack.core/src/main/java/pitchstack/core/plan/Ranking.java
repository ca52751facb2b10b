// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.PriorityQueue;

/** The best so many candidates by effort. */
final class Ranking {
    private final int places;
    /** The best so far where only one is wanted, which is the rule and is worth doing without a queue. */
    private Candidate best;
    private final PriorityQueue<Candidate> worstFirst;
    /** What a candidate may cost and still enter. */
    private long effortLimit = Long.MAX_VALUE;
    /** How far off one at that limit may be and still enter. */
    private long distanceLimit = Long.MAX_VALUE;

    /** A ranking of at least one place. */
    Ranking(int places) {
        this.places = places;
        this.worstFirst = places == 1 ? null : new PriorityQueue<>(Candidate.BY_EFFORT.reversed());
    }

    /** The most effort with which a candidate can still enter. */
    long effortLimit() {
        return effortLimit;
    }

    /** The largest |error| with which a candidate of at least this effort can still enter. */
    long distanceLimit(long effort) {
        return effort < effortLimit ? Long.MAX_VALUE : distanceLimit;
    }

    /** Enters a candidate if it is among the best. */
    void offer(Candidate candidate) {
        if (places == 1) {
            if (best == null || Candidate.BY_EFFORT.compare(candidate, best) < 0) {
                best = candidate;
                limit(best);
            }
            return;
        }
        if (worstFirst.size() == places) {
            if (Candidate.BY_EFFORT.compare(candidate, worstFirst.peek()) > 0) {
                return;
            }
            worstFirst.poll();
        }
        worstFirst.add(candidate);
        if (worstFirst.size() == places) {
            limit(worstFirst.peek());
        }
    }

    private void limit(Candidate last) {
        effortLimit = last.effort();
        distanceLimit = last.distance();
    }

    /** The candidates, best first. */
    List<Candidate> inOrder() {
        if (places == 1) {
            return best == null ? List.of() : List.of(best);
        }
        List<Candidate> list = new ArrayList<>(worstFirst);
        list.sort(Candidate.BY_EFFORT);
        return list;
    }
}
