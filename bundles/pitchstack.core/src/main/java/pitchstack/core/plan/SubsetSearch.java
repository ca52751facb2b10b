// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Finds the best way over stops in any order, exactly: for every set of stops, the best way over just these to each
 * setting of each of them (M. Held, R. M. Karp, A dynamic programming approach to sequencing problems, Journal of SIAM
 * 10, 1962, with the settings of a stop as further places). Ways that cannot beat a plan already known are dropped.
 */
final class SubsetSearch {
    private final Itinerary itinerary;
    private final Distances distances;
    private final int[] stops;
    private final Limit limit;
    /** By stop: what reaching it costs at the least, wherever from. */
    private final long[] entry;
    /** By set of stops, and in it by stop: the best ways that end there. */
    private final Front[][] fronts;
    private Way best;

    private SubsetSearch(Itinerary itinerary, Distances distances, Way known) {
        this.itinerary = itinerary;
        this.distances = distances;
        this.stops = distances.stops();
        this.limit = Limit.of(known);
        this.best = known;
        this.fronts = new Front[1 << stops.length][];
        this.entry = new long[stops.length];
        for (int j = 1; j < distances.nodes(); j++) {
            entry[j - 1] = Long.MAX_VALUE;
            for (int i = 0; i < distances.nodes(); i++) {
                entry[j - 1] = i == j ? entry[j - 1] : Math.min(entry[j - 1], distances.least()[i][j]);
            }
        }
    }

    /**
     * Searches.
     *
     * @param distances between the stops
     * @param known a way over the stops that is not to be worsened
     * @return the best way, which may be the known one
     */
    static Way best(Itinerary itinerary, Distances distances, Way known) {
        return new SubsetSearch(itinerary, distances, known).best();
    }

    private Way best() {
        extend(itinerary.start(), 0);
        for (int set = 1; set < fronts.length; set++) {
            if (fronts[set] != null) {
                itinerary.progress.done(set, fronts.length);
                for (Way way : ways(fronts[set])) {
                    Way ended = way.leavingOut(itinerary.leftOutFault() * (stops.length - Integer.bitCount(set)));
                    best = Way.BEST_FIRST.compare(ended, best) < 0 ? ended : best;
                    extend(way, set);
                }
                fronts[set] = null;
            }
        }
        return best;
    }

    private static List<Way> ways(Front[] fronts) {
        List<Way> all = new ArrayList<>();
        for (Front front : fronts) {
            if (front != null) {
                all.addAll(front.ways());
            }
        }
        all.sort(Way.BEST_FIRST.thenComparing(Comparator.comparingInt(Way::stop)));
        return all;
    }

    private void extend(Way way, int set) {
        for (int s = 0; s < stops.length; s++) {
            int larger = set | 1 << s;
            if (larger != set) {
                if (fronts[larger] == null) {
                    fronts[larger] = new Front[stops.length];
                }
                if (fronts[larger][s] == null) {
                    fronts[larger][s] = itinerary.front(stops[s]);
                }
                itinerary.extend(way, stops[s], fronts[larger][s], within(larger));
            }
        }
    }

    /** The limit, less what the stops that are left must cost: unless stops may still be left out. */
    private Limit within(int set) {
        long rest = 0;
        if (limit.faults() < itinerary.leftOutFault()) {
            for (int s = 0; s < stops.length; s++) {
                rest += (set & 1 << s) == 0 ? entry[s] : 0;
            }
        }
        return new Limit(limit.faults(), limit.effort() - rest);
    }
}
