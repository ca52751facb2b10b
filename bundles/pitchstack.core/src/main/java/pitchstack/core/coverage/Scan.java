// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import pitchstack.core.coverage.Bounds.Arc;
import pitchstack.core.plan.Progress;

/** What the settings over teeth no worse than one kind reach. For one request, and one thread. */
final class Scan {
    /** Joins whatever lies on the axis. */
    static final long ANY = 1L << 62;

    private final Places places;
    private final Bounds bounds;
    private final int most;
    private final Progress progress;
    private RunTree tree;
    private ToothWalk teeth;

    /**
     * @param places the places; {@code null} where there is none
     * @param bounds the travel
     * @param most the most spans to hold at once
     */
    Scan(Places places, Bounds bounds, int most, Progress progress) {
        this.places = places;
        this.bounds = bounds;
        this.most = most;
        this.progress = progress;
    }

    /** The spacing within which a tolerance leaves nothing out: next − last ≤ 2 · tolerance + 1. */
    static long joinOf(long tolerance) {
        return tolerance >= ANY / 2 ? ANY : 2 * tolerance + 1;
    }

    Bounds bounds() {
        return bounds;
    }

    /** From the lowest to the highest place of a setting, whatever the state of its teeth. */
    Arc allPlaces() {
        return bounds.places();
    }

    /** The places; {@code null} where there is none. */
    Places places() {
        return places;
    }

    /** Whether a lap holds every group of offsets; else, where laps are alike, it holds none. */
    boolean isFull(long lap) {
        return places != null && places.fullUntil(lap) >= lap;
    }

    /** The last lap of those from one on that hold all groups or none, or the lap before where it holds some. */
    long alikeUntil(long lap) {
        return places == null ? Long.MAX_VALUE : Math.max(places.fullUntil(lap), places.emptyUntil(lap));
    }

    /** Whether there is no setting at all. */
    boolean isEmpty() {
        return places == null || bounds.places().isEmpty();
    }

    /** Walks over the runs of all places in a window, at a spacing. */
    void walk(Arc window, long join, LapSink sink) {
        if (isEmpty() || window.isEmpty()) {
            return;
        }
        if (places.isEven()) {
            new LapWalk(places, tree(join)).walk(window, Long.MIN_VALUE, Long.MAX_VALUE, progress, sink);
        } else {
            teeth(join).walk(window, progress, sink);
        }
    }

    /** The runs of places in a window, at a spacing. */
    Spans runs(Arc window, long join) {
        Collector found = new Collector(join, most);
        walk(window, join, found);
        return found.build();
    }

    /** The runs of all places of some laps, at a spacing; of even places. */
    Spans runs(long fromLap, long toLap, long join) {
        Collector found = new Collector(join, most);
        if (!isEmpty()) {
            new LapWalk(places, tree(join)).walk(bounds.places(), fromLap, toLap, progress, found);
        }
        return found.build();
    }

    /** The walk over places that are not even. */
    ToothWalk teeth(long join) {
        if (teeth == null || teeth.join() != join) {
            teeth = new ToothWalk(places, join);
        }
        return teeth;
    }

    RunTree tree(long join) {
        if (tree == null || tree.join() != join) {
            tree = new RunTree(places.laps, join);
        }
        return tree;
    }

    /** From the lowest to the highest place; empty where there is none. */
    Spans ends() {
        Spans ends = Spans.NONE;
        for (Arc arc : bounds.arcs()) {
            for (Arc window : bounds.windows(arc)) {
                ends = ends.or(runs(window, ANY), ANY);
            }
        }
        return ends;
    }

    /** The runs of positions, on a rotary axis in [0, turn), at a spacing. */
    Spans positions(long join) {
        Spans positions = Spans.NONE;
        for (Arc arc : bounds.arcs()) {
            for (Arc window : bounds.windows(arc)) {
                positions = positions.or(bounds.onTurn(runs(window, join), join), join);
            }
        }
        return positions;
    }

    /** Every position of the travel within a tolerance of one that can be set. */
    Spans covered(long tolerance) {
        Spans positions = positions(joinOf(tolerance));
        return positions.isEmpty() ? positions : widened(positions, Math.min(tolerance, ANY)).and(bounds.travel());
    }

    private Spans widened(Spans positions, long by) {
        long turn = bounds.turn();
        if (turn > 0 && by >= turn / 2) {
            return Spans.of(0, turn - 1);
        }
        return bounds.onTurn(positions.widened(by), 1);
    }
}
