// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.List;
import java.util.Optional;

/** Lists the combinations of some stages that keep the shift limits among them, over teeth of any kind. */
final class CombinationLister {
    /**
     * The most entries of a list: about 42 MB with six stages. Stages whose combinations would be more are searched
     * one by one instead.
     */
    static final int MOST_ENTRIES = 1 << 20;
    /** Indices tried for each entry allowed: limits that reject more than this are better applied one by one, too. */
    private static final long TRIES_PER_ENTRY = 16;

    private final StageTable[] stages;
    /** What the limits say of each stage once those before it have their indices. */
    private final ShiftRule.Check[][] checks;
    private final int most;
    private final int[] indices;
    private int count;
    private long triesLeft;
    /** The entries in the order in which they are met; null while only counting. */
    private long[] offset;
    private int[][] index;
    private byte[] worn;

    private CombinationLister(List<StageTable> some, List<ShiftRule> rules, int allStages, int most) {
        this.stages = some.toArray(StageTable[]::new);
        this.checks = new ShiftRule.Check[stages.length][];
        for (int level = 0; level < stages.length; level++) {
            StageTable table = stages[level];
            List<StageTable> known = some.subList(0, level + 1);
            checks[level] = rules.stream().filter(rule -> rule.concerns(table)).map(rule -> rule.given(known))
                    .toArray(ShiftRule.Check[]::new);
        }
        this.most = most;
        this.indices = new int[allStages];
        this.triesLeft = TRIES_PER_ENTRY * most;
    }

    private boolean isTooLong() {
        return count > most || triesLeft < 0;
    }

    /**
     * Lists combinations.
     *
     * @param stages the stages to combine, lowest first; none gives one combination at offset 0
     * @param rules the limits that concern these stages alone
     * @param allStages how many stages the axis has
     * @param most the most entries to list
     * @return the list, or empty if it would be longer or take too many tries
     */
    static Optional<Combinations> list(List<StageTable> stages, List<ShiftRule> rules, int allStages, int most) {
        CombinationLister lister = new CombinationLister(stages, rules, allStages, most);
        lister.visit(0, 0, 0);
        if (lister.isTooLong()) {
            return Optional.empty();
        }
        int size = lister.count;
        lister.offset = new long[size];
        lister.index = new int[stages.size()][size];
        lister.worn = new byte[size];
        lister.count = 0;
        lister.triesLeft = Long.MAX_VALUE;
        lister.visit(0, 0, 0);
        return Optional.of(lister.sorted());
    }

    private Combinations sorted() {
        int[] order = RadixSort.order(offset);
        return Combinations.pick(stages, offset, index, worn, order, order.length);
    }

    private void visit(int level, long sum, int wornStages) {
        if (level == stages.length) {
            if (offset != null) {
                fill(sum, wornStages);
            }
            count++;
            return;
        }
        StageTable table = stages[level];
        for (int n = table.first; n <= table.last && !isTooLong(); n++) {
            triesLeft--;
            indices[table.stage] = n;
            if (limitsAllow(level)) {
                visit(level + 1, sum + table.offset(n), wornWith(wornStages, table.wear(n)));
            }
        }
    }

    private static int wornWith(int worn, int wear) {
        return worn == Combinations.BARRED || wear > 1 ? Combinations.BARRED : worn + wear;
    }

    private boolean limitsAllow(int level) {
        for (ShiftRule.Check check : checks[level]) {
            if (!check.allows(indices)) {
                return false;
            }
        }
        return true;
    }

    private void fill(long sum, int wornStages) {
        offset[count] = sum;
        worn[count] = (byte) wornStages;
        for (int i = 0; i < stages.length; i++) {
            index[i][count] = indices[stages[i].stage];
        }
    }
}
