// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.Optional;

/**
 * Improves an order by turning round a stretch of it, or by moving a short stretch elsewhere, as long as the best way over
 * the order becomes better. An order is searched only if the least efforts between its stops leave room for that.
 */
final class OrderImprover {
    /** Longer stretches are hardly ever worth moving. */
    private static final int LONGEST_MOVED = 3;
    /** Orders searched, times their stops, at the most: some seconds. */
    private static final long MOST_WORK = 3_000_000;

    private final Itinerary itinerary;
    private final Distances distances;
    private int[] order;
    private Way best;
    private long work;

    /** Begins with a known way over an order of nodes. */
    OrderImprover(Itinerary itinerary, Distances distances, int[] order, Way best) {
        this.itinerary = itinerary;
        this.distances = distances;
        this.order = order;
        this.best = best;
    }

    /** Improves until no change helps, or enough has been tried; the same work on every machine. */
    Way improve() {
        while (work < MOST_WORK && (turnRound() || move())) {
            itinerary.progress.done(Math.min(work, MOST_WORK), MOST_WORK);
        }
        return best;
    }

    private boolean turnRound() {
        for (int i = 0; i < order.length; i++) {
            for (int j = i + 1; j < order.length; j++) {
                int[] changed = order.clone();
                for (int k = i; k <= j; k++) {
                    changed[k] = order[i + j - k];
                }
                if (isBetter(changed)) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean move() {
        for (int length = 1; length <= LONGEST_MOVED; length++) {
            for (int from = 0; from + length <= order.length; from++) {
                for (int to = 0; to + length <= order.length; to++) {
                    if (to != from && (isBetter(moved(from, length, to, false))
                            || length > 1 && isBetter(moved(from, length, to, true)))) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    /** The order with a stretch taken out and put back so that it begins at another place. */
    private int[] moved(int from, int length, int to, boolean turned) {
        int[] changed = new int[order.length];
        int rest = 0;
        for (int i = 0; i < changed.length; i++) {
            if (i >= to && i < to + length) {
                changed[i] = order[turned ? from + length - 1 - (i - to) : from + i - to];
            } else {
                rest += rest == from ? length : 0;
                changed[i] = order[rest++];
            }
        }
        return changed;
    }

    private boolean isBetter(int[] changed) {
        boolean allStops = best.faults() < itinerary.leftOutFault();
        if (work >= MOST_WORK || allStops && distances.along(changed) > best.effort()) {
            itinerary.endIfCancelled();
            return false;
        }
        work += order.length;
        long taken = itinerary.memoryTaken();
        Optional<Way> found = new OrderedSearch(itinerary).best(distances.stopsOf(changed), Limit.of(best));
        if (found.isPresent() && Way.BEST_FIRST.compare(found.get(), best) < 0) {
            best = found.get();
            order = changed;
            return true;
        }
        itinerary.giveBackTo(taken);
        return false;
    }
}
