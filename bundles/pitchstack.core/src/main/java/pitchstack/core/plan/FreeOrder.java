// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.Optional;
import java.util.OptionalLong;

/**
 * Finds an order of the stops, and their settings, that cost little: the least for short lists. For others it begins
 * with the orders of well-known heuristics, improves them, and states a bound below which no order can come.
 *
 * @param itinerary the stops and their settings
 * @param mostExactWork how many ways an exact search may have to look at
 */
record FreeOrder(Itinerary itinerary, double mostExactWork) {
    /** Some seconds. */
    static final double MOST_EXACT_WORK = 4e8;
    private static final int MOST_EXACT_STOPS = 20;

    /**
     * What was found.
     *
     * @param best the way
     * @param leastMs what every order costs at the least; empty where stops had to be left out for others
     */
    record Found(Way best, OptionalLong leastMs) { }

    /**
     * Finds an order.
     *
     * @param oneByOne what planning one by one in the given order comes to
     */
    Found find(Limit oneByOne) {
        int[] stops = itinerary.reachable();
        refuseTooMany(stops.length);
        Distances distances = Distances.between(itinerary, stops);
        Way known = new OrderedSearch(itinerary).best(stops, oneByOne);
        for (int[] order : new FirstOrders(distances).list()) {
            itinerary.endIfCancelled();
            Way improved = new OrderImprover(itinerary, distances, order, Limit.NONE).improve();
            known = Way.BEST_FIRST.compare(improved, known) < 0 ? improved : known;
        }
        Optional<Way> exact = canBeExact(stops) ? exact(distances, known) : Optional.empty();
        if (exact.isPresent()) {
            return new Found(exact.get(), OptionalLong.of(exact.get().effort()));
        }
        boolean all = known.faults() < itinerary.leftOutFault();
        return new Found(known, all ? OptionalLong.of(OrderBound.of(distances, known.effort(), itinerary))
                : OptionalLong.empty());
    }

    /** The best way; empty where it takes more memory than foreseen, as it may where turning round has a cost. */
    private Optional<Way> exact(Distances distances, Way known) {
        long taken = itinerary.memoryTaken();
        try {
            return Optional.of(SubsetSearch.best(itinerary, distances, known));
        } catch (EndedEarly e) {
            if (e.answer instanceof SequenceAnswer.Cancelled) {
                throw e;
            }
            itinerary.giveBackTo(taken);
            return Optional.empty();
        }
    }

    private boolean canBeExact(int[] stops) {
        double settings = 0;
        for (int stop : stops) {
            settings += itinerary.choices.get(stop).size();
        }
        double sets = Math.pow(2, stops.length);
        return stops.length <= MOST_EXACT_STOPS && sets * settings * settings <= mostExactWork
                && sets * settings * Itinerary.BYTES_OF_A_WAY <= itinerary.request.memoryBytes() / 2.0;
    }

    private void refuseTooMany(int stops) {
        double bytes = (stops + 1.0) * (stops + 1.0) * (Long.BYTES + FirstOrders.BYTES_OF_AN_EDGE / 2.0);
        if (bytes > itinerary.request.memoryBytes() - itinerary.memoryTaken()) {
            itinerary.refuse("To look for the best order of " + stops + " stops takes more than ",
                    "keep their given order, split the list");
        }
    }
}
