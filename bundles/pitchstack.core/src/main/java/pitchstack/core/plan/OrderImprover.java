// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Improves an order by turning round a stretch of it, or by moving a short stretch elsewhere, as long as the best way over
 * the order becomes better. An order is searched only if the least efforts between its stops leave room for that.
 */
final class OrderImprover {
    /** Longer stretches are hardly ever worth moving. */
    private static final int LONGEST_MOVED = 3;
    /** Searching one stop counts as so many orders looked at. */
    private static final int WORK_OF_A_STOP = 10;
    /** Orders looked at, at the most: some seconds. */
    private static final long MOST_WORK = 10_000_000;

    private final Itinerary itinerary;
    private final Distances distances;
    private final OrderedSearch search;
    private int[] order;
    /** The best ways so far before each place of the order, and after the last. */
    private List<List<Way>> layers;
    private Way best;
    private long work;

    /**
     * Begins with an order of nodes.
     *
     * @param limit what is known to be possible in this order
     */
    OrderImprover(Itinerary itinerary, Distances distances, int[] order, Limit limit) {
        this.itinerary = itinerary;
        this.distances = distances;
        this.search = new OrderedSearch(itinerary);
        this.order = order;
        this.layers = search.layers(distances.stopsOf(order), limit);
        this.best = layers.get(order.length).get(0);
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
        int same = Arrays.mismatch(order, changed);
        long[] rest = distances.rest(changed);
        work++;
        if (same < 0 || work >= MOST_WORK || cannotBeat(layers.get(same), rest[same])) {
            itinerary.endIfCancelled();
            return false;
        }
        long taken = itinerary.memoryTaken();
        List<List<Way>> next = new ArrayList<>(layers.subList(0, same + 1));
        for (int k = same; k < changed.length && !next.get(k).isEmpty(); k++) {
            work += WORK_OF_A_STOP;
            next.add(search.next(next.get(k), distances.stops()[changed[k] - 1], limit(rest[k + 1])));
        }
        itinerary.giveBackTo(taken);
        Optional<Way> end = next.get(next.size() - 1).stream().findFirst();
        if (end.isEmpty() || Way.BEST_FIRST.compare(end.get(), best) >= 0) {
            return false;
        }
        best = end.get();
        order = changed;
        layers = next;
        return true;
    }

    /** Whether no way that goes on from some others, at the least cost of the rest, is better than the best known. */
    private boolean cannotBeat(List<Way> ways, long rest) {
        return visitsAll() && ways.stream().allMatch(way -> way.isWorseThan(best.faults(), best.effort() - rest));
    }

    private Limit limit(long rest) {
        return new Limit(best.faults(), best.effort() - (visitsAll() ? rest : 0));
    }

    /** Whether the best way leaves out no stop; the least cost of the rest then holds for every way that can beat it. */
    private boolean visitsAll() {
        return best.faults() < itinerary.leftOutFault();
    }
}
