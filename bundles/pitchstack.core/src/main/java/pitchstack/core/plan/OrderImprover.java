// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Improves an order by turning round a stretch of it, or by moving a short stretch elsewhere, as long as the best way over
 * the order becomes better. An order is searched only if the least efforts between its stops leave room for that, and
 * only from the first stop on that has changed.
 */
final class OrderImprover {
    /** Longer stretches are hardly ever worth moving. */
    private static final int LONGEST_MOVED = 3;
    /** Searching one stop counts as looking at so many orders. */
    private static final int WORK_OF_A_STOP = 10;
    /** Orders looked at, at the most: some seconds. */
    private static final long MOST_WORK = 20_000_000;

    private final Itinerary itinerary;
    private final Distances distances;
    private final OrderedSearch search;
    private Patchwork patches;
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
        this.patches = new Patchwork(distances, order);
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
        int end = patches.size() - 1;
        for (int i = 0; i <= end; i++) {
            itinerary.endIfCancelled();
            for (int j = i + 1; j <= end; j++) {
                if (isBetter(patches.start().then(0, i - 1).thenTurned(i, j).then(j + 1, end))) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean move() {
        int end = patches.size() - 1;
        for (int length = 1; length <= LONGEST_MOVED; length++) {
            for (int from = 0; from + length - 1 <= end; from++) {
                itinerary.endIfCancelled();
                int last = from + length - 1;
                for (int to = 0; to <= end + 1; to++) {
                    if ((to < from || to > last + 1) && (isBetter(moved(from, last, to, false))
                            || length > 1 && isBetter(moved(from, last, to, true)))) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    /** The order with the stretch from one place to another put before a third. */
    private Patchwork moved(int from, int last, int to, boolean turned) {
        int end = patches.size() - 1;
        patches.start().then(0, Math.min(from, to) - 1);
        if (to > last) {
            patches.then(last + 1, to - 1);
        }
        if (turned) {
            patches.thenTurned(from, last);
        } else {
            patches.then(from, last);
        }
        return to > last ? patches.then(to, end) : patches.then(to, from - 1).then(last + 1, end);
    }

    private boolean isBetter(Patchwork changed) {
        work++;
        if (work >= MOST_WORK || visitsAll() && changed.least() > best.effort()) {
            return false;
        }
        int[] order = changed.order();
        int same = Math.max(0, Arrays.mismatch(order, patches.original()));
        long[] rest = distances.rest(order);
        if (visitsAll() && layers.get(same).stream().allMatch(
                way -> way.isWorseThan(best.faults(), best.effort() - rest[same]))) {
            return false;
        }
        return isBetter(order, same, rest);
    }

    private boolean isBetter(int[] order, int same, long[] rest) {
        long taken = itinerary.memoryTaken();
        List<List<Way>> next = new ArrayList<>(layers.subList(0, same + 1));
        for (int k = same; k < order.length && !next.get(k).isEmpty(); k++) {
            work += WORK_OF_A_STOP;
            Limit limit = new Limit(best.faults(), best.effort() - (visitsAll() ? rest[k + 1] : 0));
            next.add(search.next(next.get(k), distances.stops()[order[k] - 1], limit));
        }
        itinerary.giveBackTo(taken);
        List<Way> ends = next.get(next.size() - 1);
        if (ends.isEmpty() || Way.BEST_FIRST.compare(ends.get(0), best) >= 0) {
            return false;
        }
        best = ends.get(0);
        layers = next;
        patches = new Patchwork(distances, order);
        return true;
    }

    /** Whether the best way leaves out no stop; the least cost of the rest then holds for every way that can beat it. */
    private boolean visitsAll() {
        return best.faults() < itinerary.leftOutFault();
    }
}
