// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.Arrays;
import java.util.concurrent.CancellationException;
import pitchstack.core.coverage.Bounds.Arc;
import pitchstack.core.plan.Progress;

/**
 * Paints a grid along a linear axis tooth by tooth of a coarse stage whose indices have errors: for each index what its
 * own place and the offsets reach. Worth it where those reach little of the travel more than a few times; no order is
 * needed then, and nothing is kept.
 */
final class ToothPainter {
    /** Up to so often each cell may be painted on average. */
    private static final int MOST_TIMES = 4;
    /** Teeth between two looks at the progress. */
    private static final int LOOK = 256;
    /** Copying so few cells is quicker than filling them. */
    private static final int SHORT = 64;

    private final Grid grid;
    private final long tolerance;
    private final Scan clean;
    private final Scan usable;
    private final Progress progress;
    /** Made when painting begins. */
    private byte[] cells;

    /**
     * @param grid the cells of one span of travel
     * @param tolerance itself included
     * @param clean what is reached clean
     * @param usable what is reached clean or over worn teeth
     */
    ToothPainter(Grid grid, long tolerance, Scan clean, Scan usable, Progress progress) {
        this.grid = grid;
        this.tolerance = Math.min(tolerance, Scan.ANY);
        this.clean = clean;
        this.usable = usable;
        this.progress = progress;
    }

    /** Whether so few cells would be painted again and again that this is the way to paint them. */
    boolean isWorthIt() {
        return !usable.isEmpty() && times(usable) + (clean == usable || clean.isEmpty() ? 0 : times(clean)) <= MOST_TIMES;
    }

    private double times(Scan scan) {
        ToothWalk teeth = scan.teeth(Scan.joinOf(tolerance));
        double perTooth = teeth.covered(tolerance) / grid.step() + teeth.runs();
        return perTooth * (lastIndex(scan) - firstIndex(scan) + 1) / Math.max(1, grid.cells());
    }

    /** The indices that may put something into the travel. */
    private static long firstIndex(Scan scan) {
        Places places = scan.places();
        return Math.max(places.firstIndex(), places.lapOf(scan.allPlaces().low() - places.laps.highest()) - 1);
    }

    private static long lastIndex(Scan scan) {
        Places places = scan.places();
        return Math.min(places.lastIndex(), places.lapOf(scan.allPlaces().high() - places.laps.lowest()) + 1);
    }

    byte[] paint() {
        cells = new byte[grid.cells()];
        Arrays.fill(cells, Reached.NOT.code());
        // With the same offsets, what is over clean teeth of the coarse stage is painted clean in any case.
        boolean sameOffsets = !clean.isEmpty() && clean.places().laps == usable.places().laps;
        paint(usable, Reached.WORN.code(), sameOffsets ? clean.places() : null);
        if (!clean.isEmpty()) {
            paint(clean, Reached.CLEAN.code(), null);
        }
        return cells;
    }

    private void paint(Scan scan, byte code, Places except) {
        Places places = scan.places();
        Brush brush = new Brush(places.laps.together(Scan.joinOf(tolerance)), code);
        Arc all = scan.allPlaces();
        long last = lastIndex(scan);
        int looks = 0;
        for (long n = firstIndex(scan); n <= last; n++) {
            if (looks++ % LOOK == 0 && progress.isCancelled()) {
                throw new CancellationException();
            }
            if (places.allows(n) && (except == null || !except.allows(n))) {
                long at = places.at(n);
                boolean whole = at + places.laps.lowest() >= all.low() && at + places.laps.highest() <= all.high();
                if (whole) {
                    brush.paint(at);
                } else {
                    brush.paint(at, places.laps, all);
                }
            }
        }
    }

    /** The runs of offsets made ready for the grid, to be painted tooth after tooth without a division for each. */
    private final class Brush {
        private final Spans runs;
        private final long lowest;
        /** By run: how many steps it begins above the lowest offset less the tolerance, and how far beyond. */
        private final long[] fromSteps;
        private final long[] fromBeyond;
        /** The same for the first count past its end. */
        private final long[] toSteps;
        private final long[] toBeyond;
        private final byte code;
        private final byte[] some = new byte[SHORT];

        private Brush(Spans runs, byte code) {
            this.runs = runs;
            this.code = code;
            Arrays.fill(some, code);
            this.lowest = runs.lowest() - tolerance;
            this.fromSteps = new long[runs.size()];
            this.fromBeyond = new long[runs.size()];
            this.toSteps = new long[runs.size()];
            this.toBeyond = new long[runs.size()];
            for (int i = 0; i < fromSteps.length; i++) {
                fromSteps[i] = (runs.first(i) - tolerance - lowest) / grid.step();
                fromBeyond[i] = (runs.first(i) - tolerance - lowest) % grid.step();
                toSteps[i] = (runs.last(i) + tolerance + 1 - lowest) / grid.step();
                toBeyond[i] = (runs.last(i) + tolerance + 1 - lowest) % grid.step();
            }
        }

        private void paint(long at) {
            long first = grid.cellNumber(at + lowest);
            long phase = grid.positionOf(first) - at - lowest;
            for (int i = 0; i < fromSteps.length; i++) {
                // One more where it lies beyond the phase, without a branch that would be as good as random.
                fill(first + fromSteps[i] + (phase - fromBeyond[i] >>> Long.SIZE - 1),
                        first + toSteps[i] + (phase - toBeyond[i] >>> Long.SIZE - 1));
            }
        }

        /** Paints only what lies between two places. */
        private void paint(long at, Laps laps, Arc all) {
            for (int i = 0; i < runs.size(); i++) {
                Spans left = laps.between(Math.max(runs.first(i), all.low() - at),
                        Math.min(runs.last(i), all.high() - at));
                if (!left.isEmpty()) {
                    fill(grid.cellNumber(at + left.lowest() - tolerance),
                            grid.cellNumber(at + left.highest() + tolerance + 1));
                }
            }
        }

        private void fill(long fromCell, long toCell) {
            int from = (int) Math.max(0, fromCell);
            int to = (int) Math.min(cells.length, toCell);
            if (to - from > SHORT) {
                Arrays.fill(cells, from, to, code);
            } else if (from < to) {
                System.arraycopy(some, 0, cells, from, to - from);
            }
        }
    }
}
