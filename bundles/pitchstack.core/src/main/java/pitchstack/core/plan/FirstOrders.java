// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.ArrayList;
import java.util.List;
import org.jgrapht.Graph;
import org.jgrapht.alg.interfaces.HamiltonianCycleAlgorithm;
import org.jgrapht.alg.tour.GreedyHeuristicTSP;
import org.jgrapht.alg.tour.NearestNeighborHeuristicTSP;
import org.jgrapht.alg.tour.TwoOptHeuristicTSP;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;

/**
 * Orders to begin with, by the round-trip heuristics of JGraphT on the least efforts between stops. A round trip
 * becomes a path from the start by way of one more node, which is near to the start and equally far from all else.
 *
 * @param distances between the stops
 */
record FirstOrders(Distances distances) {
    /** An edge with its weight and its places in the tables of the graph and of the heuristics, as measured. */
    static final long BYTES_OF_AN_EDGE = 400;
    private static final int PASSES = 1;

    /** Some good orders of nodes, the start not among them. */
    List<int[]> list() {
        List<int[]> orders = new ArrayList<>();
        if (distances.nodes() < 3) {
            orders.add(distances.nodes() == 2 ? new int[] {1} : new int[0]);
            return orders;
        }
        Graph<Integer, DefaultWeightedEdge> graph = graph();
        orders.add(order(new TwoOptHeuristicTSP<>(PASSES, new GreedyHeuristicTSP<>()), graph));
        orders.add(order(new TwoOptHeuristicTSP<>(PASSES, new NearestNeighborHeuristicTSP<>(0)), graph));
        return orders;
    }

    private Graph<Integer, DefaultWeightedEdge> graph() {
        Graph<Integer, DefaultWeightedEdge> graph = new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
        int extra = distances.nodes();
        for (int i = 0; i <= extra; i++) {
            graph.addVertex(i);
        }
        double farthest = 0;
        for (int i = 0; i < extra; i++) {
            for (int j = i + 1; j < extra; j++) {
                double mean = i == 0 ? distances.least()[0][j]
                        : distances.least()[i][j] / 2.0 + distances.least()[j][i] / 2.0;
                farthest = Math.max(farthest, mean);
                graph.setEdgeWeight(graph.addEdge(i, j), mean);
            }
        }
        // Farther than any tour can save by not passing from the extra node to the start.
        double far = (farthest + 1) * extra;
        for (int i = 0; i < extra; i++) {
            graph.setEdgeWeight(graph.addEdge(i, extra), i == 0 ? 0 : far);
        }
        return graph;
    }

    private int[] order(HamiltonianCycleAlgorithm<Integer, DefaultWeightedEdge> heuristic,
            Graph<Integer, DefaultWeightedEdge> graph) {
        List<Integer> tour = new ArrayList<>(heuristic.getTour(graph).getVertexList());
        tour.remove(tour.size() - 1);
        int nodes = tour.size();
        int start = tour.indexOf(0);
        // The path goes on from the start away from the extra node, whichever way round the tour is listed.
        int way = tour.get((start + 1) % nodes) == nodes - 1 ? -1 : 1;
        List<Integer> order = new ArrayList<>();
        for (int i = 1; i < nodes; i++) {
            int node = tour.get(Math.floorMod(start + way * i, nodes));
            if (node != nodes - 1) {
                order.add(node);
            }
        }
        return order.stream().mapToInt(Integer::intValue).toArray();
    }
}
