// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.Arrays;

/**
 * What every order of some stops costs at the least: a spanning tree of the stops and the start, made heavier where it
 * branches and lighter where it ends until it looks like a path (M. Held, R. M. Karp, The traveling-salesman problem and
 * minimum spanning trees, Part II, Mathematical Programming 1, 1971, for a path whose end is free). The weights are whole
 * numbers, so that the bound is exact.
 */
final class OrderBound {
    /** After so many rounds the bound hardly moves. */
    private static final int ROUNDS = 120;

    private final Distances distances;
    private final int nodes;
    /** What a node adds to each of its edges. */
    private final long[] weight;
    private final int[] degree;

    private OrderBound(Distances distances) {
        this.distances = distances;
        this.nodes = distances.nodes();
        this.weight = new long[nodes];
        this.degree = new int[nodes];
    }

    /**
     * A lower bound of the effort over all stops.
     *
     * @param known the effort of some order
     * @return at most the effort of the best order, in milliseconds
     */
    static long of(Distances distances, long known, Itinerary itinerary) {
        if (distances.nodes() < 2) {
            return 0;
        }
        OrderBound bound = new OrderBound(distances);
        long best = 0;
        double ease = 1;
        for (int round = 0; round < ROUNDS; round++) {
            itinerary.progress.done(round, ROUNDS);
            itinerary.endIfCancelled();
            long found = bound.tree();
            ease = found > best ? ease : ease * 0.93;
            best = Math.max(best, found);
            if (!bound.adjust(ease, known - found)) {
                break;
            }
        }
        return Math.min(best, known);
    }

    /**
     * A path is a tree in which the start has one edge, one other node has one and the rest have two. Its weighted
     * length is its length plus each node's weight for each of its edges, so its length is at least the weighted
     * length of the least tree, less those weights.
     */
    private long tree() {
        long sum = spanningTree() + weight[0];
        long smallest = Long.MAX_VALUE;
        for (int i = 0; i < nodes; i++) {
            sum -= 2 * weight[i];
            smallest = i == 0 ? smallest : Math.min(smallest, weight[i]);
        }
        return sum + smallest;
    }

    /** The weighted length of the least spanning tree, by Prim's method; notes the degrees. */
    private long spanningTree() {
        long[] distance = new long[nodes];
        int[] parent = new int[nodes];
        boolean[] inTree = new boolean[nodes];
        Arrays.fill(distance, Long.MAX_VALUE);
        Arrays.fill(degree, 0);
        distance[0] = 0;
        long sum = 0;
        for (int step = 0; step < nodes; step++) {
            int next = nearest(distance, inTree);
            inTree[next] = true;
            sum += distance[next];
            if (step > 0) {
                degree[next]++;
                degree[parent[next]]++;
            }
            for (int j = 0; j < nodes; j++) {
                long edge = inTree[j] ? Long.MAX_VALUE : distances.either(next, j) + weight[next] + weight[j];
                if (edge < distance[j]) {
                    distance[j] = edge;
                    parent[j] = next;
                }
            }
        }
        return sum;
    }

    private static int nearest(long[] distance, boolean[] inTree) {
        int nearest = -1;
        for (int j = 0; j < distance.length; j++) {
            if (!inTree[j] && (nearest < 0 || distance[j] < distance[nearest])) {
                nearest = j;
            }
        }
        return nearest;
    }

    /** Makes nodes with too many edges heavier; false where nothing is left to do. */
    private boolean adjust(double ease, long gap) {
        long excess = 0;
        for (int i = 0; i < nodes; i++) {
            excess += (long) (degree[i] - wanted(i)) * (degree[i] - wanted(i));
        }
        long step = excess == 0 ? 0 : Math.round(ease * gap / excess);
        for (int i = 0; i < nodes; i++) {
            weight[i] += step * (degree[i] - wanted(i));
        }
        return step > 0;
    }

    /** A path ends somewhere, so that one node's excess of −1 is to be expected; the step takes no notice of that. */
    private static int wanted(int node) {
        return node == 0 ? 1 : 2;
    }
}
