// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.util.Optional;
import java.util.OptionalLong;
import pitchstack.core.coverage.Coverage;
import pitchstack.core.coverage.FinestStep;
import pitchstack.core.coverage.GridCoverage;
import pitchstack.core.coverage.Outcome;
import pitchstack.core.coverage.Reach;
import pitchstack.core.coverage.Reached;
import pitchstack.core.coverage.Ways;
import pitchstack.core.plan.Progress;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Wear;

/**
 * What one axis reaches.
 *
 * @param axis the axis
 * @param coverage for the tolerance asked for
 * @param clean the finest step everywhere over clean teeth; empty where nothing can be set over them
 * @param usable the same over worn teeth too
 * @param grid the multiples of the step asked for; empty where none is
 * @param counted the settings that reach the position asked for; empty where none is
 */
record Mapped(AxisSpec axis, Coverage coverage, Optional<FinestStep> clean, Optional<FinestStep> usable,
        Optional<GridCoverage> grid, Optional<Counted> counted) {
    /**
     * How many settings reach a position.
     *
     * @param position the position, as asked for
     * @param ways the settings
     */
    record Counted(long position, Ways ways) { }

    /**
     * Maps an axis whose numbers are sound.
     *
     * @param axis the axis
     * @param options what is asked of it
     * @throws BadInputException if an option cannot be read, or it is too much to map
     * @throws StoppedException if it was stopped
     */
    static Mapped of(AxisSpec axis, CoverageOptions options, Progress progress)
            throws BadInputException, StoppedException {
        long tolerance = options.tolerance(axis);
        OptionalLong step = options.step(axis);
        OptionalLong at = options.at(axis);
        Reach reach = done(Reach.of(axis, progress));
        Optional<Counted> counted = at.isEmpty() ? Optional.empty()
                : Optional.of(new Counted(at.getAsLong(), reach.ways(at.getAsLong(), tolerance)));
        Optional<GridCoverage> grid = step.isEmpty() ? Optional.empty()
                : Optional.of(done(reach.grid(0, step.getAsLong(), tolerance, progress)));
        return new Mapped(axis, done(reach.coverage(tolerance, progress)),
                done(reach.finestStep(Wear.CLEAN, progress)), done(reach.finestStep(Wear.WORN, progress)), grid, counted);
    }

    /**
     * What came of a piece of work.
     *
     * @throws BadInputException if it would take too much
     * @throws StoppedException if it was stopped
     */
    static <T> T done(Outcome<T> outcome) throws BadInputException, StoppedException {
        if (outcome instanceof Outcome.Refused<T> refused) {
            throw new BadInputException(refused.why());
        }
        if (outcome instanceof Outcome.Cancelled<T>) {
            throw new StoppedException();
        }
        return outcome.get();
    }

    /** Whether all that was asked for is reached: every multiple of the step, or else the whole travel. */
    boolean isAllReached() {
        return !coverage.stretches().isEmpty() && grid.map(g -> g.count(Reached.NOT))
                .orElseGet(() -> coverage.summary().gaps()) == 0;
    }

    /** The first multiples of the step that are not reached, lowest first. */
    long[] missed(int most) {
        GridCoverage cells = grid.orElseThrow();
        long[] missed = new long[Math.min(most, cells.count(Reached.NOT))];
        int from = 0;
        for (int i = 0; i < missed.length; i++) {
            int cell = cells.next(from, Reached.NOT).orElseThrow();
            missed[i] = cells.position(cell);
            from = cell + 1;
        }
        return missed;
    }
}
