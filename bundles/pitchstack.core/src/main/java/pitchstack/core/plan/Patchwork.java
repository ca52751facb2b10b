// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

/** An order put together from stretches of another one; what it costs at the least is known without looking at each stop. */
final class Patchwork {
    private static final int MOST_PIECES = 5;

    private final Distances distances;
    private final int[] original;
    /** By place: the least efforts from the first place to it, summed up. */
    private final long[] forth;
    /** By place: the same, going back from it to the first. */
    private final long[] back;
    /** Both ends of each piece; the larger first where it is turned. */
    private final int[] ends = new int[2 * MOST_PIECES];
    private int pieces;

    /** Begins with an order of nodes. */
    Patchwork(Distances distances, int[] original) {
        this.distances = distances;
        this.original = original;
        this.forth = new long[original.length];
        this.back = new long[original.length];
        for (int k = 1; k < original.length; k++) {
            forth[k] = forth[k - 1] + distances.least()[original[k - 1]][original[k]];
            back[k] = back[k - 1] + distances.least()[original[k]][original[k - 1]];
        }
    }

    int size() {
        return original.length;
    }

    /** The order from which the pieces are taken; not to be changed. */
    int[] original() {
        return original;
    }

    /** Begins again without a piece. */
    Patchwork start() {
        pieces = 0;
        return this;
    }

    /** Goes on with the places from one to another; with none where the other is smaller. */
    Patchwork then(int first, int last) {
        return first > last ? this : add(first, last);
    }

    /** Goes on with these places turned round. */
    Patchwork thenTurned(int first, int last) {
        return add(last, first);
    }

    private Patchwork add(int from, int to) {
        ends[2 * pieces] = from;
        ends[2 * pieces + 1] = to;
        pieces++;
        return this;
    }

    /** What every way over the new order costs at the least. */
    long least() {
        long sum = 0;
        int at = 0;
        for (int p = 0; p < pieces; p++) {
            int from = ends[2 * p];
            int to = ends[2 * p + 1];
            sum += distances.least()[at][original[from]];
            sum += from <= to ? forth[to] - forth[from] : back[from] - back[to];
            at = original[to];
        }
        return sum;
    }

    /** The new order. */
    int[] order() {
        int[] order = new int[original.length];
        int next = 0;
        for (int p = 0; p < pieces; p++) {
            int step = ends[2 * p] <= ends[2 * p + 1] ? 1 : -1;
            for (int k = ends[2 * p]; k != ends[2 * p + 1] + step; k += step) {
                order[next++] = original[k];
            }
        }
        return order;
    }
}
