// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.concurrent.CancellationException;
import pitchstack.core.coverage.Bounds.Arc;
import pitchstack.core.plan.Progress;

/**
 * Paints the least effort of each cell of a grid. Where every group of offsets lies in a lap and the coarse stage has
 * to move the same way for all of them, laps differ only by what its teeth cost, and one pattern serves them all.
 * Elsewhere, near home, ends and marks or where indices have errors, a lap of a linear axis is painted offset by offset,
 * the cheapest first, until it is full; and on a rotary axis group by group.
 */
final class EffortPainter {
    /** Laps between two looks at the progress. */
    private static final int LOOK = 64;
    /** The laps at both ends of some that are alike have other neighbours. */
    private static final int FEWEST_ALIKE = 4;
    /** Laps of offsets for each index of the coarse stage. */
    private static final int MOST_LAPS = 8;

    private final int[] cells;
    private final Grid grid;
    private final long tolerance;
    private final Bounds bounds;
    private final EffortSource source;
    private final Places places;
    private final EffortPieces[] pieces;
    private final EffortBrush[] byGroup;
    private EffortBrush up;
    private EffortBrush down;
    private Progress progress = Progress.NONE;
    private int looks;

    /**
     * @param cells the efforts, of which lesser ones are kept
     * @param tolerance itself included; no more than the travel is long
     */
    EffortPainter(int[] cells, Grid grid, long tolerance, Bounds bounds, EffortSource source) {
        this.cells = cells;
        this.grid = grid;
        this.tolerance = tolerance;
        this.bounds = bounds;
        this.source = source;
        this.places = source.places();
        this.pieces = new EffortPieces[places.laps.groups()];
        this.byGroup = new EffortBrush[pieces.length];
    }

    void paint(Progress look) {
        progress = look;
        // With a larger tolerance, offsets of more than the neighbouring laps reach into a lap; and with few indices for
        // the laps of offsets, most offsets are not in most laps.
        long indices = places.lastIndex() - places.firstIndex() + 1L;
        boolean near = tolerance + places.largestError() <= places.laps.pitch()
                && places.laps.highestLap() - places.laps.lowestLap() <= MOST_LAPS * indices;
        for (Arc arc : bounds.arcs()) {
            for (Arc window : bounds.windows(arc)) {
                if (bounds.turn() == 0 && near && cells.length > 0) {
                    paintLapByLap(window);
                } else {
                    paintGroupByGroup(window);
                }
            }
        }
    }

    private void look(long part, long of) {
        if (looks++ % LOOK == 0) {
            if (progress.isCancelled()) {
                throw new CancellationException();
            }
            progress.done(part, of);
        }
    }

    private void paintLapByLap(Arc window) {
        CheapestFirst single = new CheapestFirst(cells, grid, tolerance, window, source);
        long cutHigh = places.lapOf(window.high());
        long begin = places.lapOf(window.low() - tolerance) - 1;
        long end = places.lapOf(window.high() + tolerance) + 1;
        long firstWhole = places.lapOf(window.low()) + 1;
        for (long lap = begin; lap <= end; lap++) {
            look(lap - begin, end - begin);
            long until = lap < firstWhole ? lap - 1 : Math.min(source.alikeUntil(lap), cutHigh - 1);
            if (until - lap + 1 < FEWEST_ALIKE) {
                single.paint(lap);
                continue;
            }
            for (long alike = lap; alike <= until; alike++) {
                look(alike - begin, end - begin);
                paintAlike(alike);
            }
            single.paint(lap);
            single.paint(until);
            lap = until;
        }
    }

    private void paintAlike(long lap) {
        long perTooth = source.cost().perToothMs();
        if (source.isUp(lap)) {
            up = up == null ? pattern(-perTooth) : up;
            paint(up, places.base(lap), source.addReleased() + perTooth * (lap - source.home()));
        } else {
            down = down == null ? pattern(perTooth) : down;
            paint(down, places.base(lap), source.addReleased() + perTooth * (source.home() - lap));
        }
    }

    /** All groups together, each with what its lap adds to the cost of the coarse stage. */
    private EffortBrush pattern(long perLap) {
        return new EffortBrush(pattern(perLap, 0, byGroup.length), -tolerance, grid.step());
    }

    private EffortPieces pattern(long perLap, int from, int to) {
        if (to - from == 1) {
            return pieces(from).least(perLap * places.laps.lap(from), EffortPieces.none(), 0);
        }
        int middle = (from + to) >>> 1;
        return pattern(perLap, from, middle).least(0, pattern(perLap, middle, to), 0);
    }

    private EffortPieces pieces(int group) {
        if (pieces[group] == null) {
            pieces[group] = EffortPieces.around(places.laps, group, 0, places.laps.pitch() - 1, tolerance);
        }
        return pieces[group];
    }

    /** Paints each group of offsets of each lap by itself. */
    private void paintGroupByGroup(Arc window) {
        long cutLow = places.lapOf(window.low());
        long cutHigh = places.lapOf(window.high());
        // An error can carry a place into the next lap.
        int stray = places.isEven() ? 0 : 1;
        long begin = Math.max(cutLow - stray, places.firstLap());
        long end = Math.min(cutHigh + stray, places.lastLap());
        for (long lap = places.nextLap(begin); lap <= end; lap = places.nextLap(lap + 1)) {
            look(lap - begin, end - begin);
            boolean whole = bounds.turn() == 0 && lap > cutLow + stray && lap < cutHigh - stray;
            if (whole && source.alikeUntil(lap) >= lap) {
                paintAlike(lap);
            } else {
                paintGroups(lap, whole, window);
            }
        }
    }

    private void paintGroups(long lap, boolean whole, Arc window) {
        Laps laps = places.laps;
        int to = laps.firstFrom(lap - places.firstIndex() + 1);
        for (int group = laps.firstFrom(lap - places.lastIndex()); group < to; group++) {
            long index = lap - laps.lap(group);
            if (!source.has(index)) {
                continue;
            }
            long base = places.base(lap) + places.error(index);
            if (whole) {
                byGroup[group] = byGroup[group] == null
                        ? new EffortBrush(pieces(group), -tolerance, grid.step()) : byGroup[group];
                paint(byGroup[group], base, source.add(index));
            } else {
                Arc inLap = new Arc(window.low() - base, window.high() - base).and(new Arc(0, laps.pitch() - 1));
                paintPieces(EffortPieces.around(laps, group, inLap.low(), inLap.high(), tolerance), base,
                        source.add(index));
            }
        }
    }

    private void paint(EffortBrush brush, long base, long add) {
        long lowest = base - tolerance;
        long first = grid.cellNumber(lowest);
        brush.paint(cells, first, grid.positionOf(first) - lowest, add);
    }

    /** Paints piece by piece, on a rotary axis brought back into one turn. */
    private void paintPieces(EffortPieces some, long base, long add) {
        for (int i = 0; i + 1 < some.size(); i++) {
            if (some.effort(i) != EffortPieces.NONE) {
                Spans part = bounds.onTurn(Spans.of(base + some.start(i), base + some.start(i + 1) - 1), 1);
                grid.undercut(cells, part, (int) (some.effort(i) + add));
            }
        }
    }
}
