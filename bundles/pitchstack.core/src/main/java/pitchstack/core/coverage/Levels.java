// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import pitchstack.core.plan.AxisTables;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.IndexErrors;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.Wear;

/**
 * Finds the places for each kind of teeth. The coarse stage is the one of most indices that no limit ties to others; all
 * others are fine.
 */
final class Levels {
    /** The most different offsets: with what is worked out from them, about 300 MB. */
    static final int MOST_OFFSETS = 1 << 22;
    private static final Wear[] WEARS = Wear.values();

    private final AxisTables tables;
    private final AxisSpec axis;
    private final FineOffsets offsets;
    private final List<Integer> fine;
    /** The coarse stage, or −1 where limits tie every stage with more than one index to others. */
    private final int coarse;

    /**
     * @param tables the axis
     * @param offsets of its stages
     */
    Levels(AxisTables tables, FineOffsets offsets) {
        this.tables = tables;
        this.axis = tables.axis();
        this.offsets = offsets;
        List<Integer> all = IntStream.range(0, axis.stages().size()).boxed().toList();
        // The first of the largest.
        this.coarse = all.stream().filter(j -> !offsets.isTied(j) && tables.indices(j).count() > 1)
                .max(Comparator.comparingInt((Integer j) -> tables.indices(j).count())
                        .thenComparing(Comparator.reverseOrder())).orElse(-1);
        this.fine = all.stream().filter(j -> j != coarse).toList();
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
            laps = sameFine ? laps : laps(offsets.offsets(fine, worst));
            boolean same = sameFine && (coarse < 0 || !has(coarse, worst));
            found.add(same ? found.get(found.size() - 1) : places(laps, worst));
        }
        return found;
    }

    private boolean has(int stage, Wear wear) {
        IndexRange range = tables.indices(stage);
        return IntStream.rangeClosed(range.first(), range.last()).anyMatch(n -> tables.wear(stage, n) == wear);
    }

    private Laps laps(OffsetSet set) {
        if (set.size() == 0) {
            return null;
        }
        long whole = set.offset(set.size() - 1) - set.offset(0) + 1;
        return new Laps(set, coarse < 0 ? whole : axis.stages().get(coarse).pitch());
    }

    private Optional<Places> places(Laps laps, Wear worst) {
        int[] allowed = coarse < 0 ? new int[1] : offsets.allowed(coarse, worst);
        if (laps == null || allowed.length == 0) {
            return Optional.empty();
        }
        int[] first = IntStream.range(0, allowed.length).filter(i -> i == 0 || allowed[i - 1] + 1 < allowed[i])
                .map(i -> allowed[i]).toArray();
        int[] last = IntStream.range(0, allowed.length)
                .filter(i -> i == allowed.length - 1 || allowed[i] + 1 < allowed[i + 1]).map(i -> allowed[i]).toArray();
        IndexErrors errors = coarse < 0 ? IndexErrors.NONE : axis.stages().get(coarse).errors();
        return Optional.of(new Places(axis.scale().wrap(axis.datum()), laps, first, last, errors));
    }
}
