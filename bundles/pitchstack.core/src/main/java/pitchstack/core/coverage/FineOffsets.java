// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import pitchstack.core.plan.AxisTables;
import pitchstack.core.plan.Progress;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.ShiftLimit;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.Wear;

/**
 * Finds the offsets of some stages together: those of stages that limits tie together are listed, those of all others
 * are added up.
 */
final class FineOffsets {
    /** The most combinations of stages tied by limits: as many as the planner lists. */
    private static final int MOST_TIED = 1 << 20;

    private final AxisTables tables;
    private final AxisSpec axis;
    /** What moving costs, for efforts; empty where ways are counted. */
    private final Optional<StageEffort> effort;
    private final Tally tally;
    private final int most;
    private final Progress progress;
    /** The limits over two stages or more, but not over all. */
    private final List<ShiftLimit> ties;

    /**
     * @param tables the axis
     * @param effort what moving costs, to have the effort of each offset; empty to have the ways to it
     * @param most the most different offsets
     */
    FineOffsets(AxisTables tables, Optional<StageEffort> effort, int most, Progress progress) {
        this.tables = tables;
        this.axis = tables.axis();
        this.effort = effort;
        this.tally = effort.isEmpty() ? Tally.WAYS : Tally.EFFORT;
        this.most = most;
        this.progress = progress;
        this.ties = axis.shiftLimits().stream()
                .filter(limit -> limit.lowest() < limit.highest() && !tables.isOverAll(limit)).toList();
    }

    private static boolean concerns(ShiftLimit limit, int stage) {
        return limit.lowest() <= stage && stage <= limit.highest();
    }

    /** Whether a limit ties a stage to others, but not to all. */
    boolean isTied(int stage) {
        return ties.stream().anyMatch(tie -> concerns(tie, stage));
    }

    /** The indices of a stage over teeth no worse than this that keep the limits on it alone. */
    int[] allowed(int stage, Wear worst) {
        IndexRange range = tables.indices(stage);
        StageSpec spec = axis.stages().get(stage);
        long limit = axis.shiftLimits().stream().filter(l -> l.lowest() == stage && l.highest() == stage)
                .mapToLong(ShiftLimit::limit).min().orElse(Long.MAX_VALUE);
        return IntStream.rangeClosed(range.first(), range.last())
                .filter(n -> Math.abs(spec.offset(n)) <= limit && tables.wear(stage, n).compareTo(worst) <= 0).toArray();
    }

    /**
     * The offsets of some stages over teeth no worse than one kind.
     *
     * @param stages the stages, lowest first
     * @throws TooMuch if there are too many
     */
    OffsetSet offsets(List<Integer> stages, Wear worst) {
        OffsetSet sum = OffsetSet.ofSorted(tally, new long[1], new long[] {effort.isEmpty() ? 1 : 0});
        List<Integer> left = new ArrayList<>(stages);
        while (!left.isEmpty()) {
            sum = sum.plus(together(takeTied(left), worst), most, progress);
        }
        return sum;
    }

    private OffsetSet together(List<Integer> tied, Wear worst) {
        if (tied.size() == 1) {
            int stage = tied.get(0);
            StageSpec spec = axis.stages().get(stage);
            int[] allowed = allowed(stage, worst);
            // They rise with the index, since errors stay below half a pitch.
            return OffsetSet.ofSorted(tally, Arrays.stream(allowed).mapToLong(spec::offset).toArray(),
                    Arrays.stream(allowed).mapToLong(n -> figure(stage, n)).toArray());
        }
        AxisTables.Listed listed = tables.list(tied, worst, Math.min(most, MOST_TIED)).orElseThrow(TooMuch::new);
        long[] figures = new long[listed.offset().length];
        for (int k = 0; k < figures.length; k++) {
            figures[k] = figure(tied.get(0), listed.index()[0][k]);
            for (int i = 1; i < tied.size(); i++) {
                figures[k] = tally.both(figures[k], figure(tied.get(i), listed.index()[i][k]));
            }
        }
        return OffsetSet.ofSorted(tally, listed.offset(), figures);
    }

    /** One way, or the effort of moving there. */
    private long figure(int stage, int index) {
        return effort.isEmpty() ? 1 : effort.get().ms(stage, index);
    }

    /** Takes the first stage out of some, and all that limits tie to it. */
    private List<Integer> takeTied(List<Integer> left) {
        List<Integer> tied = new ArrayList<>(List.of(left.remove(0)));
        for (int i = 0; i < tied.size(); i++) {
            int member = tied.get(i);
            for (Integer other : List.copyOf(left)) {
                if (ties.stream().anyMatch(tie -> concerns(tie, member) && concerns(tie, other))) {
                    tied.add(other);
                    left.remove(other);
                }
            }
        }
        return tied.stream().sorted().toList();
    }
}
