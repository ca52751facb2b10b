// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.ShiftLimit;
import pitchstack.core.stack.Wear;

/** The stages of an axis by their indices, to be read by those who look at all settings at once. Never changed. */
public final class AxisTables {
    private static final Wear[] WEARS = Wear.values();

    private final AxisSpec axis;
    private final StageTable[] tables;

    private AxisTables(AxisSpec axis) {
        this.axis = axis;
        this.tables = IntStream.range(0, axis.stages().size()).mapToObj(j -> new StageTable(j, axis.stages().get(j)))
                .toArray(StageTable[]::new);
    }

    /**
     * The tables of an axis.
     *
     * @throws IllegalArgumentException with one sentence if its numbers cannot be planned with: see {@link Soundness}
     */
    public static AxisTables of(AxisSpec axis) {
        Optional<Unsound> problem = Soundness.problem(axis);
        if (problem.isPresent()) {
            throw new IllegalArgumentException(problem.get().sentence());
        }
        return new AxisTables(axis);
    }

    /** The axis. */
    public AxisSpec axis() {
        return axis;
    }

    /** The indices at which enough teeth of a stage are engaged; at least one. */
    public IndexRange indices(int stage) {
        return new IndexRange(tables[stage].first, tables[stage].last);
    }

    /** What the teeth engaged at an index of the range are fit for. */
    public Wear wear(int stage, int index) {
        return WEARS[tables[stage].wear(index)];
    }

    /**
     * The ways to set some stages, sorted by the offset that each gives: over the stages, index times pitch plus
     * the error of the index.
     *
     * @param offset the sums, ascending, each as often as there are ways to it
     * @param index by stage in the order asked for, and by way
     */
    public record Listed(long[] offset, int[][] index) { }

    /**
     * Lists the ways to set some stages that keep the limits that concern none but them.
     *
     * @param stages the stages, lowest first
     * @param worst the worst teeth allowed
     * @param most the most ways to list
     * @return empty if there would be more, or too many tries
     */
    public Optional<Listed> list(List<Integer> stages, Wear worst, int most) {
        List<StageTable> some = stages.stream().map(j -> tables[j]).toList();
        List<ShiftRule> rules = axis.shiftLimits().stream().map(limit -> new ShiftRule(limit, tables))
                .filter(rule -> rule.liesWithin(some)).toList();
        return CombinationLister.list(some, rules, List.of(), tables.length, most)
                .map(list -> listed(list.noWorseThan(worst), stages));
    }

    private Listed listed(Combinations list, List<Integer> stages) {
        long[] offset = new long[list.size()];
        int[][] index = new int[stages.size()][list.size()];
        int[] indices = new int[tables.length];
        for (int g = 0; g < list.groups(); g++) {
            for (int k = list.start[g]; k < list.start[g + 1]; k++) {
                offset[k] = list.offset[g];
                list.copyIndices(list.entry[k], indices);
                for (int i = 0; i < index.length; i++) {
                    index[i][k] = indices[stages.get(i)];
                }
            }
        }
        return new Listed(offset, index);
    }

    /** Where the carriage may stand. */
    public Travel travel() {
        long low = 0;
        long high = 0;
        for (StageTable table : tables) {
            low += table.lowest();
            high += table.highest();
        }
        for (ShiftLimit limit : axis.shiftLimits()) {
            if (isOverAll(limit)) {
                low = Math.max(low, -limit.limit());
                high = Math.min(high, limit.limit());
            }
        }
        long datum = axis.scale().wrap(axis.datum());
        return Travel.of(axis, datum + low, datum + high);
    }

    /** Whether a limit concerns every stage, and is thus one on the place itself. */
    public boolean isOverAll(ShiftLimit limit) {
        return limit.lowest() == 0 && limit.highest() == tables.length - 1;
    }
}
