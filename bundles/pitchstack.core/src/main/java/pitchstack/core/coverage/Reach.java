// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.List;
import java.util.Optional;
import pitchstack.core.plan.AxisTables;
import pitchstack.core.plan.Progress;
import pitchstack.core.plan.Soundness;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Wear;

/**
 * What one axis can reach. Prepared once, then asked any number of times for coverages; never changed, so that several
 * threads may ask at once. Holds at most about 200 MB, and takes as much again while it answers; what would need more
 * is refused.
 */
public final class Reach {
    /** The most stretches of one kind: 32 MB, and as much again for each step of the work. */
    static final int MOST_SPANS = 1 << 21;
    /** Sums of numbers of settings up to this still fit. */
    private static final double MOST_SETTINGS = 0x1p62;

    private final AxisSpec axis;
    private final Places clean;
    private final Places usable;
    private final Bounds bounds;
    private final int mostSpans;
    private final Refusal refusal;

    private Reach(AxisSpec axis, Places clean, Places usable, Bounds bounds, int mostSpans) {
        this.axis = axis;
        this.clean = clean;
        this.usable = usable;
        this.bounds = bounds;
        this.mostSpans = mostSpans;
        this.refusal = new Refusal(axis);
    }

    /**
     * Prepares an axis: microseconds for small stages, up to seconds for the largest.
     *
     * @param axis the axis
     * @param progress where to look for a cancellation
     * @throws IllegalArgumentException with one sentence if its numbers cannot be planned with: see {@link Soundness}
     */
    public static Outcome<Reach> of(AxisSpec axis, Progress progress) {
        return of(axis, progress, Levels.MOST_OFFSETS, MOST_SPANS);
    }

    /** The same with other budgets. */
    static Outcome<Reach> of(AxisSpec axis, Progress progress, int mostOffsets, int mostSpans) {
        AxisTables tables = AxisTables.of(axis);
        double settings = 1;
        for (int j = 0; j < axis.stages().size(); j++) {
            settings *= tables.indices(j).count();
        }
        if (settings > MOST_SETTINGS) {
            return new Outcome.Refused<>(new Refusal(axis).settings());
        }
        Levels levels = new Levels(tables, new FineOffsets(tables, Optional.empty(), mostOffsets, progress));
        return Attempt.at(() -> prepare(tables, levels, mostSpans),
                () -> new Refusal(axis).offsets(levels.coarse(), mostOffsets));
    }

    private static Reach prepare(AxisTables tables, Levels levels, int mostSpans) {
        List<Optional<Places>> places = levels.places();
        Bounds bounds = Bounds.of(tables.travel(), places.get(Wear.BARRED.ordinal()).orElse(null));
        return new Reach(tables.axis(), places.get(Wear.CLEAN.ordinal()).orElse(null),
                places.get(Wear.WORN.ordinal()).orElse(null), bounds, mostSpans);
    }

    /** The axis. */
    public AxisSpec axis() {
        return axis;
    }

    /**
     * Which positions of the travel are reached within a tolerance.
     *
     * @param tolerance itself included, at least 0
     */
    public Outcome<Coverage> coverage(long tolerance, Progress progress) {
        refuseNegative(tolerance);
        return Attempt.at(() -> {
            Spans good = scan(clean, progress).covered(tolerance);
            Spans any = clean == usable ? good : scan(usable, progress).covered(tolerance);
            return new Coverage(tolerance, bounds.turn(), Stretches.of(bounds.travel(), any, good));
        }, () -> refusal.tolerance(tolerance, mostSpans));
    }

    /**
     * How each position of a grid inside the travel is reached within a tolerance.
     *
     * @param origin any position of the grid, such as the datum
     * @param step from each position to the next, from 1 to {@link Soundness#FARTHEST}; on a rotary axis the grid
     *     starts anew at 0
     * @param tolerance itself included, at least 0
     */
    public Outcome<GridCoverage> grid(long origin, long step, long tolerance, Progress progress) {
        refuseNegative(tolerance);
        if (step < 1 || step > Soundness.FARTHEST) {
            throw new IllegalArgumentException("The step must be from 1 to " + Soundness.FARTHEST + ", not " + step);
        }
        return Attempt.at(() -> new Grid(origin, step, bounds.travel(), Grid.MOST_CELLS),
                () -> refusal.step(step, Grid.smallestStep(bounds.travel(), Grid.MOST_CELLS)))
                .then(grid -> Attempt.at(() -> paint(grid, tolerance, progress),
                        () -> refusal.tolerance(tolerance, mostSpans)));
    }

    private GridCoverage paint(Grid grid, long tolerance, Progress progress) {
        Scan good = scan(clean, progress);
        Scan any = clean == usable ? good : scan(usable, progress);
        return new GridCoverage(grid, tolerance, cells(grid, tolerance, good, any, progress));
    }

    private byte[] cells(Grid grid, long tolerance, Scan good, Scan any, Progress progress) {
        boolean linear = bounds.turn() == 0 && grid.cells() > 0;
        if (linear && (any.isEmpty() || any.places().isEven())) {
            return new GridPainter(grid, tolerance, good, any).paint();
        }
        if (linear) {
            ToothPainter painter = new ToothPainter(grid, tolerance, good, any, progress);
            if (painter.isWorthIt()) {
                return painter.paint();
            }
        }
        return grid.paint(any.covered(tolerance), good.covered(tolerance));
    }

    /**
     * How fine the positions lie everywhere; empty where nothing can be set.
     *
     * @param worst the worst teeth to stand on, clean or worn
     */
    public Outcome<Optional<FinestStep>> finestStep(Wear worst, Progress progress) {
        if (worst == Wear.BARRED) {
            throw new IllegalArgumentException("Nothing can be set over barred teeth");
        }
        return Attempt.at(() -> new FinestSearch(scan(worst == Wear.CLEAN ? clean : usable, progress)).search(),
                refusal::spacing);
    }

    /**
     * How many settings reach a position.
     *
     * @param position any position, brought back into one turn on a rotary axis
     * @param tolerance itself included, at least 0
     */
    public Ways ways(long position, long tolerance) {
        refuseNegative(tolerance);
        WaysCount count = new WaysCount(bounds, position, tolerance);
        long good = count.of(clean);
        return new Ways(good, count.of(usable) - good);
    }

    private Scan scan(Places places, Progress progress) {
        return new Scan(places, bounds, mostSpans, progress);
    }

    private static void refuseNegative(long tolerance) {
        if (tolerance < 0) {
            throw new IllegalArgumentException("The tolerance must be at least 0, not " + tolerance);
        }
    }
}
