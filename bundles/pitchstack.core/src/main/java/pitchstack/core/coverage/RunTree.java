// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

/**
 * The runs of residues of any neighbouring groups together. Unions of 1, 2, 4, … neighbouring groups are kept once
 * worked out; any range is made of few of them. For one spacing, and one thread.
 */
final class RunTree {
    /** The most spans kept: 64 MB. What would go beyond is worked out anew each time. */
    private static final int MOST_KEPT = 1 << 22;

    private final Laps laps;
    private final long join;
    /** By level and place: the union of groups {@code [place << level, (place + 1) << level)}. */
    private final Spans[][] nodes;
    private int kept;

    /** The runs within which no spacing is wider than {@code join}. */
    RunTree(Laps laps, long join) {
        this.laps = laps;
        this.join = join;
        int levels = 1;
        while (1L << levels - 1 < laps.groups()) {
            levels++;
        }
        this.nodes = new Spans[levels][];
    }

    long join() {
        return join;
    }

    /** The runs of all groups. */
    Spans all() {
        return range(0, laps.groups());
    }

    /** The runs of the groups from one up to but not including another. */
    Spans range(int from, int to) {
        Spans union = Spans.NONE;
        int low = from;
        int high = to;
        for (int level = 0; low < high; level++) {
            if ((low & 1) == 1) {
                union = union.or(node(level, low++), join);
            }
            if ((high & 1) == 1) {
                union = union.or(node(level, --high), join);
            }
            low >>= 1;
            high >>= 1;
        }
        return union;
    }

    private Spans node(int level, int place) {
        if (nodes[level] == null) {
            nodes[level] = new Spans[(laps.groups() - 1 >> level) + 1];
        }
        Spans known = nodes[level][place];
        if (known != null) {
            return known;
        }
        Spans made = make(level, place);
        if (kept + made.size() <= MOST_KEPT) {
            kept += made.size();
            nodes[level][place] = made;
        }
        return made;
    }

    private Spans make(int level, int place) {
        if (level == 0) {
            return laps.runs(place, join);
        }
        Spans low = node(level - 1, 2 * place);
        boolean hasHigh = (long) (2 * place + 1) << level - 1 < laps.groups();
        return hasHigh ? low.or(node(level - 1, 2 * place + 1), join) : low;
    }

    /** The runs of the groups from one up to but not including another, of residues between two bounds. */
    Spans range(int from, int to, long low, long high) {
        if (to - from == 1) {
            return laps.runs(from, join, low, high);
        }
        int middle = (from + to) >>> 1;
        return range(from, middle, low, high).or(range(middle, to, low, high), join);
    }
}
