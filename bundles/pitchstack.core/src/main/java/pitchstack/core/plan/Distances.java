// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

/**
 * The least effort between stops, over all their settings: no way from one to the other costs less. Node 0 is the
 * start, node i + 1 is the i-th of the stops.
 *
 * @param stops which stops
 * @param least by node to leave and node to reach, in milliseconds; 0 from a node to itself
 */
record Distances(int[] stops, long[][] least) {
    /** Measures between stops that have settings. */
    static Distances between(Itinerary itinerary, int[] stops) {
        int nodes = stops.length + 1;
        long[][] least = new long[nodes][nodes];
        for (int i = 0; i < nodes; i++) {
            itinerary.progress.done(i, nodes);
            itinerary.endIfCancelled();
            for (int j = 1; j < nodes; j++) {
                least[i][j] = i == j ? 0 : least(itinerary, i == 0 ? -1 : stops[i - 1], stops[j - 1]);
            }
        }
        return new Distances(stops, least);
    }

    private static long least(Itinerary itinerary, int from, int to) {
        int choices = from < 0 ? 1 : itinerary.choices.get(from).size();
        long least = Long.MAX_VALUE;
        for (int c = 0; c < choices; c++) {
            Moves moves = itinerary.movesFromChoice(from, c);
            for (Candidate candidate : itinerary.choices.get(to)) {
                least = Math.min(least, moves.effort(candidate.indices()));
            }
        }
        return least;
    }

    int nodes() {
        return least.length;
    }

    /** The least effort between two nodes in whichever direction; the start is only left. */
    long either(int i, int j) {
        return i == 0 || j == 0 ? least[0][i + j] : Math.min(least[i][j], least[j][i]);
    }

    /**
     * What every way over the stops in an order of nodes, the start not among them, costs at the least: by place in the
     * order, from the node before it to the end; one more place, of cost 0, after the last.
     */
    long[] rest(int[] order) {
        long[] rest = new long[order.length + 1];
        for (int k = order.length - 1; k >= 0; k--) {
            rest[k] = rest[k + 1] + least[k == 0 ? 0 : order[k - 1]][order[k]];
        }
        return rest;
    }

    /** The stops of an order of nodes. */
    int[] stopsOf(int[] order) {
        int[] result = new int[order.length];
        for (int i = 0; i < order.length; i++) {
            result[i] = stops[order[i] - 1];
        }
        return result;
    }
}
