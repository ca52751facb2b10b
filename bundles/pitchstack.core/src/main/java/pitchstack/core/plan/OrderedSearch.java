// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds the best way over stops in a given order: the shortest path through all their settings. From each stop on only
 * the best way to each of its settings matters, so the work grows with the number of stops and the square of their
 * settings. Where a move may not be possible, a way may also leave out a stop.
 *
 * @param itinerary the stops and their settings
 */
record OrderedSearch(Itinerary itinerary) {
    /**
     * Finds the best way over some stops, telling how far it is.
     *
     * @param order stops that have settings
     * @param limit what is known to be possible; a way that is worse is not wanted
     */
    Way best(int[] order, Limit limit) {
        List<Way> ways = List.of(itinerary.start());
        for (int i = 0; i < order.length; i++) {
            itinerary.progress.done(i, order.length);
            ways = next(ways, order[i], limit);
        }
        return ways.get(0);
    }

    /** The best ways before each of the stops, and after the last, each list best first. */
    List<List<Way>> layers(int[] order, Limit limit) {
        List<List<Way>> layers = new ArrayList<>();
        layers.add(List.of(itinerary.start()));
        for (int stop : order) {
            layers.add(next(layers.get(layers.size() - 1), stop, limit));
        }
        return layers;
    }

    /**
     * The best ways on to one more stop, best first.
     *
     * @param ways the best ways so far, best first
     * @param stop a stop that has settings
     * @param limit a way that is worse is not wanted
     */
    List<Way> next(List<Way> ways, int stop, Limit limit) {
        Front front = itinerary.front(stop);
        for (Way way : ways) {
            itinerary.extend(way, stop, front, limit);
        }
        List<Way> next = front.ways();
        if (itinerary.mayStrand) {
            next = new ArrayList<>(next);
            for (Way way : ways) {
                Way without = way.leavingOut(itinerary.leftOutFault());
                if (!without.isWorseThan(limit.faults(), limit.effort())) {
                    next.add(without);
                }
            }
            next.sort(Way.BEST_FIRST);
        }
        return next;
    }
}
