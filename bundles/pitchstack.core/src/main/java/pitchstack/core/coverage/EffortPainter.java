// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.Arrays;
import java.util.concurrent.CancellationException;
import java.util.function.IntToLongFunction;
import pitchstack.core.coverage.Bounds.Arc;
import pitchstack.core.plan.Progress;

/**
 * Paints the least effort of each cell of a grid. Where every group of offsets lies in a lap and the coarse stage has
 * to move the same way for all of them, laps differ only by what its teeth cost, and one pattern serves them all;
 * elsewhere each group that lies in the lap is painted by itself.
 */
final class EffortPainter {
    /** Laps between two looks at the progress. */
    private static final int LOOK = 64;

    private final Grid grid;
    private final long tolerance;
    private final Bounds bounds;
    private final Places places;
    private final long home;
    private final long perTooth;
    private final IntToLongFunction coarse;
    private final EffortBrush[] byGroup;
    private final EffortPieces[] pieces;
    private EffortBrush up;
    private EffortBrush down;
    private final int[] cells;

    /**
     * @param places the places, whose offsets carry efforts
     * @param tolerance itself included; no more than the travel is long
     * @param home the index at which the coarse stage stands
     * @param perTooth what a tooth of the coarse stage costs
     * @param coarse what moving the coarse stage to an index costs
     */
    EffortPainter(Grid grid, long tolerance, Bounds bounds, Places places, long home, long perTooth,
            IntToLongFunction coarse) {
        this.grid = grid;
        this.tolerance = tolerance;
        this.bounds = bounds;
        this.places = places;
        this.home = home;
        this.perTooth = perTooth;
        this.coarse = coarse;
        this.byGroup = new EffortBrush[places.laps.groups()];
        this.pieces = new EffortPieces[byGroup.length];
        this.cells = new int[grid.cells()];
    }

    /** The efforts; {@link EffortMap#NONE} where there is none. */
    int[] paint(Progress progress) {
        Arrays.fill(cells, EffortMap.NONE);
        for (Arc arc : bounds.arcs()) {
            for (Arc window : bounds.windows(arc)) {
                paint(window, progress);
            }
        }
        return cells;
    }

    private void paint(Arc window, Progress progress) {
        long cutLow = places.lapOf(window.low());
        long cutHigh = places.lapOf(window.high());
        long begin = Math.max(cutLow, places.firstLap());
        long end = Math.min(cutHigh, places.lastLap());
        int looks = 0;
        for (long lap = places.nextLap(begin); lap <= end; lap = places.nextLap(lap + 1)) {
            if (looks++ % LOOK == 0) {
                if (progress.isCancelled()) {
                    throw new CancellationException();
                }
                progress.done(lap - begin, end - begin);
            }
            boolean cut = lap == cutLow || lap == cutHigh;
            long lowest = lap - places.laps.highestLap();
            long highest = lap - places.laps.lowestLap();
            boolean whole = !cut && bounds.turn() == 0 && places.fullUntil(lap) >= lap;
            if (whole && lowest > home) {
                up = up == null ? pattern(-perTooth) : up;
                paint(up, lap, coarse.applyAsLong((int) lowest) - perTooth * (lowest - lap));
            } else if (whole && highest < home) {
                down = down == null ? pattern(perTooth) : down;
                paint(down, lap, coarse.applyAsLong((int) highest) - perTooth * (lap - highest));
            } else {
                paintGroups(lap, cut, window);
            }
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

    private void paintGroups(long lap, boolean cut, Arc window) {
        Laps laps = places.laps;
        for (int run = places.runEndingFrom(lap - laps.highestLap()); run < places.runs()
                && places.runFirst(run) <= lap - laps.lowestLap(); run++) {
            int to = laps.firstFrom(lap - places.runFirst(run) + 1);
            for (int group = laps.firstFrom(lap - places.runLast(run)); group < to; group++) {
                long add = coarse.applyAsLong((int) (lap - laps.lap(group)));
                if (bounds.turn() == 0 && !cut) {
                    byGroup[group] = byGroup[group] == null
                            ? new EffortBrush(pieces(group), -tolerance, grid.step()) : byGroup[group];
                    paint(byGroup[group], lap, add);
                } else {
                    Arc inLap = new Arc(window.low() - places.base(lap), window.high() - places.base(lap))
                            .and(new Arc(0, laps.pitch() - 1));
                    paintPieces(EffortPieces.around(laps, group, inLap.low(), inLap.high(), tolerance), lap, add);
                }
            }
        }
    }

    private void paint(EffortBrush brush, long lap, long add) {
        long lowest = places.base(lap) - tolerance;
        long first = grid.cellNumber(lowest);
        brush.paint(cells, first, grid.positionOf(first) - lowest, add);
    }

    /** Paints piece by piece, on a rotary axis brought back into one turn. */
    private void paintPieces(EffortPieces some, long lap, long add) {
        for (int i = 0; i + 1 < some.size(); i++) {
            if (some.effort(i) != EffortPieces.NONE) {
                Spans part = bounds.onTurn(Spans.of(places.base(lap) + some.start(i),
                        places.base(lap) + some.start(i + 1) - 1), 1);
                grid.undercut(cells, part, (int) (some.effort(i) + add));
            }
        }
    }
}
