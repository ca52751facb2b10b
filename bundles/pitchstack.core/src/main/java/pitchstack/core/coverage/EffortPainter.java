// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.concurrent.CancellationException;
import pitchstack.core.coverage.Bounds.Arc;
import pitchstack.core.plan.Progress;

/**
 * Paints the least effort of each cell of a grid. Laps differ by what the teeth of the coarse stage cost and, near ends
 * and marks, by the groups of offsets in them; they are painted from patterns of neighbouring groups for which the stage
 * has to move the same way. Where indices have errors no lap is like another, and a lap of a linear axis is painted
 * offset by offset, the cheapest first, until it is full.
 */
final class EffortPainter {
    /** Laps between two looks at the progress. */
    private static final int LOOK = 64;
    /** Laps of offsets for each index of the coarse stage. */
    private static final int MOST_LAPS = 8;

    private final int[] cells;
    private final Grid grid;
    private final long tolerance;
    private final Bounds bounds;
    private final EffortSource source;
    private final Rankings rankings;
    private final Places places;
    private final EffortPatterns up;
    private final EffortPatterns down;
    private Progress progress = Progress.NONE;
    private int looks;

    /**
     * @param cells the efforts, of which lesser ones are kept
     * @param rankings of the offsets, for that tolerance
     * @param up the patterns of laps that are reached upwards from home
     * @param down and downwards
     */
    EffortPainter(int[] cells, Grid grid, Bounds bounds, EffortSource source, Rankings rankings, EffortPatterns up,
            EffortPatterns down) {
        this.cells = cells;
        this.grid = grid;
        this.tolerance = up.tolerance();
        this.bounds = bounds;
        this.source = source;
        this.rankings = rankings;
        this.places = source.places();
        this.up = up;
        this.down = down;
    }

    void paint(Progress look) {
        progress = look;
        // With a larger tolerance, offsets of more than the neighbouring laps reach into a lap; and with few indices for
        // the laps of offsets, most offsets are not in most laps.
        long indices = places.lastIndex() - places.firstIndex() + 1L;
        boolean lapByLap = bounds.turn() == 0 && !places.isEven() && rankings.reach() <= places.laps.pitch()
                && places.laps.highestLap() - places.laps.lowestLap() <= MOST_LAPS * indices;
        for (Arc arc : bounds.arcs()) {
            for (Arc window : bounds.windows(arc)) {
                if (lapByLap) {
                    paintLapByLap(window);
                } else {
                    paintByGroups(window);
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

    /** Of laps of which none is like another. */
    private void paintLapByLap(Arc window) {
        CheapestFirst single = new CheapestFirst(cells, grid, window, source, rankings);
        long begin = places.lapOf(window.low() - tolerance) - 1;
        long end = places.lapOf(window.high() + tolerance) + 1;
        for (long lap = begin; lap <= end; lap++) {
            look(lap - begin, end - begin);
            single.paint(lap);
        }
    }

    /** Of laps that are alike but for the groups of offsets in them, if indices have no errors. */
    private void paintByGroups(Arc window) {
        long cutLow = places.lapOf(window.low());
        long cutHigh = places.lapOf(window.high());
        // An error can carry a place into the next lap.
        int stray = places.isEven() ? 0 : 1;
        long begin = Math.max(cutLow - stray, places.firstLap());
        long end = Math.min(cutHigh + stray, places.lastLap());
        for (long lap = places.nextLap(begin); lap <= end; lap = places.nextLap(lap + 1)) {
            look(lap - begin, end - begin);
            boolean whole = bounds.turn() == 0 && lap > cutLow + stray && lap < cutHigh - stray;
            if (whole && source.isAll(lap)) {
                EffortPatterns way = way(lap - places.laps.lowestLap());
                paint(way.all(), places.base(lap), add(way, lap));
            } else {
                paintRanges(lap, whole, window);
            }
        }
    }

    /** The patterns that an index is painted from. */
    private EffortPatterns way(long index) {
        return index >= source.home() ? up : down;
    }

    /** What to add to the efforts of a pattern in a lap. */
    private long add(EffortPatterns way, long lap) {
        return source.addReleased() + way.perLap() * (source.home() - lap);
    }

    /** Paints the groups that lie in a lap, together as far as the coarse stage moves the same way for them. */
    private void paintRanges(long lap, boolean whole, Arc window) {
        Laps laps = places.laps;
        int to = laps.firstFrom(lap - places.firstIndex() + 1);
        int next;
        for (int group = laps.firstFrom(lap - places.lastIndex()); group < to; group = next) {
            next = group + 1;
            long index = lap - laps.lap(group);
            if (!source.has(index)) {
                continue;
            }
            if (!whole) {
                paintCut(group, index, places.base(lap) + places.error(index), window);
            } else if (index == source.home() || !places.isEven()) {
                long base = places.base(lap) + places.error(index);
                EffortPatterns way = way(index);
                long add = source.add(index) - way.perLap() * laps.lap(group);
                way.range(group, next, brush -> paint(brush, base, add));
            } else {
                while (next < to && source.has(lap - laps.lap(next)) && lap - laps.lap(next) != source.home()
                        && way(lap - laps.lap(next)) == way(index)) {
                    next++;
                }
                EffortPatterns way = way(index);
                way.range(group, next, brush -> paint(brush, places.base(lap), add(way, lap)));
            }
        }
    }

    /** Paints a group of which only what comes to lie in a window counts. */
    private void paintCut(int group, long index, long base, Arc window) {
        Laps laps = places.laps;
        Arc inLap = new Arc(window.low() - base, window.high() - base).and(new Arc(0, laps.pitch() - 1));
        paintPieces(EffortPieces.around(laps, group, inLap.low(), inLap.high(), tolerance), base, source.add(index));
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
