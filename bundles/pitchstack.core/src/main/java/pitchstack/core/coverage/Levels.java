// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import pitchstack.core.plan.AxisTables;
import pitchstack.core.plan.Progress;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.ShiftLimit;
import pitchstack.core.stack.Wear;

/**
 * Finds the places for each kind of teeth. The coarse stage is the one of most indices that no limit ties to others;
 * the offsets of stages that limits tie together are listed, those of all others are added up.
 */
final class Levels {
    /** The most different offsets: with what is worked out from them, about 300 MB. */
    static final int MOST_OFFSETS = 1 << 22;
    /** The most combinations of stages tied by limits: as many as the planner lists. */
    private static final int MOST_TIED = 1 << 20;
    private static final Wear[] WEARS = Wear.values();

    private final AxisTables tables;
    private final AxisSpec axis;
    private final Progress progress;
    private final int most;
    /** The limits over two stages or more, but not over all. */
    private final List<ShiftLimit> ties;
    private final List<Integer> fine;
    /** The coarse stage, or −1 where limits tie every stage with more than one index to others. */
    private final int coarse;

    Levels(AxisTables tables, int most, Progress progress) {
        this.tables = tables;
        this.axis = tables.axis();
        this.most = most;
        this.progress = progress;
        this.ties = axis.shiftLimits().stream()
                .filter(limit -> limit.lowest() < limit.highest() && !tables.isOverAll(limit)).toList();
        List<Integer> all = IntStream.range(0, axis.stages().size()).boxed().toList();
        // The first of the largest.
        this.coarse = all.stream().filter(j -> ties.stream().noneMatch(tie -> concerns(tie, j)))
                .filter(j -> tables.indices(j).count() > 1)
                .max(Comparator.comparingInt((Integer j) -> tables.indices(j).count())
                        .thenComparing(Comparator.reverseOrder())).orElse(-1);
        this.fine = all.stream().filter(j -> j != coarse).toList();
    }

    private static boolean concerns(ShiftLimit limit, int stage) {
        return limit.lowest() <= stage && stage <= limit.highest();
    }

    /** The coarse stage, where there is one. */
    Optional<Integer> coarse() {
        return coarse < 0 ? Optional.empty() : Optional.of(coarse);
    }

    /**
     * By the worst teeth allowed, the places; empty where there is none. Equal ones are the same object.
     *
     * @throws TooMuch if there are too many offsets
     */
    List<Optional<Places>> places() {
        List<Optional<Places>> found = new ArrayList<>();
        Laps laps = null;
        for (Wear worst : WEARS) {
            boolean first = found.isEmpty();
            boolean sameFine = !first && fine.stream().noneMatch(j -> has(j, worst));
            laps = sameFine ? laps : laps(offsets(worst));
            boolean same = sameFine && (coarse < 0 || !has(coarse, worst));
            found.add(same ? found.get(found.size() - 1) : places(laps, worst));
        }
        return found;
    }

    private boolean has(int stage, Wear wear) {
        IndexRange range = tables.indices(stage);
        return IntStream.rangeClosed(range.first(), range.last()).anyMatch(n -> tables.wear(stage, n) == wear);
    }

    private Laps laps(OffsetSet offsets) {
        if (offsets.size() == 0) {
            return null;
        }
        long whole = offsets.offset(offsets.size() - 1) - offsets.offset(0) + 1;
        return new Laps(offsets, coarse < 0 ? whole : axis.stages().get(coarse).pitch());
    }

    private Optional<Places> places(Laps laps, Wear worst) {
        int[] allowed = coarse < 0 ? new int[1] : allowed(coarse, worst);
        if (laps == null || allowed.length == 0) {
            return Optional.empty();
        }
        int[] first = IntStream.range(0, allowed.length).filter(i -> i == 0 || allowed[i - 1] + 1 < allowed[i])
                .map(i -> allowed[i]).toArray();
        int[] last = IntStream.range(0, allowed.length)
                .filter(i -> i == allowed.length - 1 || allowed[i] + 1 < allowed[i + 1]).map(i -> allowed[i]).toArray();
        return Optional.of(new Places(axis.scale().wrap(axis.datum()), laps, first, last));
    }

    /** The indices of a stage over teeth no worse than this that keep the limits on it alone. */
    private int[] allowed(int stage, Wear worst) {
        IndexRange range = tables.indices(stage);
        long pitch = axis.stages().get(stage).pitch();
        long limit = axis.shiftLimits().stream().filter(l -> l.lowest() == stage && l.highest() == stage)
                .mapToLong(ShiftLimit::limit).min().orElse(Long.MAX_VALUE);
        return IntStream.rangeClosed(range.first(), range.last())
                .filter(n -> Math.abs(n * pitch) <= limit && tables.wear(stage, n).compareTo(worst) <= 0).toArray();
    }

    private OffsetSet offsets(Wear worst) {
        OffsetSet sum = OffsetSet.ZERO;
        List<Integer> left = new ArrayList<>(fine);
        while (!left.isEmpty()) {
            sum = sum.plus(offsets(takeTied(left), worst), most, progress);
        }
        return sum;
    }

    private OffsetSet offsets(List<Integer> tied, Wear worst) {
        if (tied.size() == 1) {
            int stage = tied.get(0);
            long pitch = axis.stages().get(stage).pitch();
            return OffsetSet.ofSorted(Arrays.stream(allowed(stage, worst)).mapToLong(n -> n * pitch).toArray());
        }
        return OffsetSet.ofSorted(tables.offsets(tied, worst, Math.min(most, MOST_TIED)).orElseThrow(TooMuch::new));
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
