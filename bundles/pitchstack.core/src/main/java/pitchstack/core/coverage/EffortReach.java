// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import pitchstack.core.plan.AxisTables;
import pitchstack.core.plan.Progress;
import pitchstack.core.plan.Soundness;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.Wear;

/**
 * What reaching each position costs from one setting, each stage in one step: the release and the teeth. Prepared once,
 * then asked any number of times; never changed, so that several threads may ask at once. What the way there needs
 * besides (an order of steps that keeps the limits, turning round) is not looked at.
 */
public final class EffortReach {
    /** The most cells: 128 MB. */
    private static final int MOST_CELLS = 1 << 25;

    private final AxisTables tables;
    private final StageEffort effort;
    private final Optional<Integer> coarse;
    private final Optional<Places> clean;
    private final Optional<Places> usable;
    private final Bounds bounds;

    private EffortReach(AxisTables tables, StageEffort effort, Levels levels) {
        this.tables = tables;
        this.effort = effort;
        this.coarse = levels.coarse();
        List<Optional<Places>> places = levels.places();
        this.clean = places.get(Wear.CLEAN.ordinal());
        this.usable = places.get(Wear.WORN.ordinal());
        this.bounds = Bounds.of(tables.travel(), places.get(Wear.BARRED.ordinal()).orElse(null));
    }

    /**
     * Prepares an axis.
     *
     * @param axis the axis
     * @param from where its stages stand, one index for each
     * @param progress where to look for a cancellation
     * @throws IllegalArgumentException with one sentence if its numbers cannot be planned with: see {@link Soundness}
     */
    public static Outcome<EffortReach> of(AxisSpec axis, Setting from, Progress progress) {
        AxisTables tables = AxisTables.of(axis);
        if (from.size() != axis.stages().size()) {
            throw new IllegalArgumentException("The starting setting has " + from.size() + " indices, but the axis has "
                    + axis.stages().size() + " stages.");
        }
        StageEffort effort = new StageEffort(axis, from);
        double most = 0;
        for (int j = 0; j < axis.stages().size(); j++) {
            IndexRange range = tables.indices(j);
            most += Math.max(effort.ms(j, range.first()), effort.ms(j, range.last()));
        }
        if (most >= EffortMap.WORN) {
            return new Outcome.Refused<>(new Refusal(axis).effort());
        }
        Levels levels = new Levels(tables, new FineOffsets(tables, Optional.of(effort), Levels.MOST_OFFSETS, progress));
        return Attempt.at(() -> new EffortReach(tables, effort, levels),
                () -> new Refusal(axis).offsets(levels.coarse(), Levels.MOST_OFFSETS));
    }

    /**
     * The least effort of each position of a grid inside the travel.
     *
     * @param origin any position of the grid, such as the datum
     * @param step from each position to the next, from 1 to {@link Soundness#FARTHEST}; on a rotary axis the grid
     *     starts anew at 0
     * @param tolerance itself included, at least 0
     */
    public Outcome<EffortMap> map(long origin, long step, long tolerance, Progress progress) {
        if (tolerance < 0 || step < 1 || step > Soundness.FARTHEST) {
            throw new IllegalArgumentException("The step must be from 1 to " + Soundness.FARTHEST + " and the tolerance"
                    + " at least 0, not " + step + " and " + tolerance);
        }
        Spans travel = bounds.travel();
        return Attempt.at(() -> {
            Grid grid = new Grid(origin, step, travel, MOST_CELLS);
            int[] efforts = new int[grid.cells()];
            Arrays.fill(efforts, EffortMap.NONE);
            // More than the travel, or than half a turn, reaches no more.
            long far = bounds.turn() == 0 ? bounds.places().high() - bounds.places().low() : bounds.turn() / 2;
            usable.ifPresent(places -> paint(efforts, grid, places, Math.min(tolerance, far), progress));
            return new EffortMap(grid, tolerance, efforts);
        }, () -> new Refusal(tables.axis()).step(step, Grid.smallestStep(travel, MOST_CELLS)));
    }

    private void paint(int[] efforts, Grid grid, Places all, long tolerance, Progress progress) {
        int home = coarse.map(effort.from()::index).orElse(0);
        EffortCost cost = coarse.map(j -> tables.axis().stages().get(j).cost()).orElse(new EffortCost(0, 0));
        Painters painters = new Painters(efforts, grid, tolerance, cost.perToothMs(), all);
        // With the same offsets, only settings over worn teeth of the coarse stage are new among all.
        boolean sameOffsets = clean.isPresent() && clean.get().laps == all.laps;
        if (clean.isPresent()) {
            EffortSource source = new EffortSource(clean.get(), null, home, cost, 0);
            (sameOffsets ? painters : new Painters(efforts, grid, tolerance, cost.perToothMs(), clean.get()))
                    .of(bounds, source).paint(progress);
        }
        if (clean.isEmpty() || clean.get() != all) {
            EffortSource source = new EffortSource(all, sameOffsets ? clean.get() : null, home, cost, EffortMap.WORN);
            painters.of(bounds, source).paint(progress);
        }
    }

    /** What painters of the same offsets share. */
    private static final class Painters {
        private final int[] efforts;
        private final Grid grid;
        private final Rankings rankings;
        private final EffortPatterns up;
        private final EffortPatterns down;

        private Painters(int[] efforts, Grid grid, long tolerance, long perTooth, Places places) {
            this.efforts = efforts;
            this.grid = grid;
            this.rankings = new Rankings(places, tolerance, perTooth, grid.step());
            this.up = new EffortPatterns(places.laps, tolerance, grid.step(), -perTooth);
            this.down = new EffortPatterns(places.laps, tolerance, grid.step(), perTooth);
        }

        private EffortPainter of(Bounds bounds, EffortSource source) {
            return new EffortPainter(efforts, grid, bounds, source, rankings, up, down);
        }
    }
}
