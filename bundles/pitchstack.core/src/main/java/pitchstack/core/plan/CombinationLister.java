// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.List;
import java.util.Optional;

/** Lists the combinations of some stages that keep the shift limits among them, over teeth of any kind. */
final class CombinationLister {
    /**
     * The most entries of a list: about 34 MB with six stages. Stages whose combinations would be more are searched
     * one by one instead.
     */
    static final int MOST_ENTRIES = 1 << 20;
    /** Indices tried for each entry allowed: limits that reject more than this are better applied one by one, too. */
    private static final long TRIES_PER_ENTRY = 16;

    private final StageTable[] stages;
    private final List<ShiftRule> rules;
    private final int most;
    private final int[] indices;
    private int count;
    private long triesLeft;
    /** Null while only counting. */
    private Combinations filling;

    private CombinationLister(StageTable[] stages, List<ShiftRule> rules, int allStages, int most) {
        this.stages = stages;
        this.rules = rules;
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
    static Optional<Combinations> list(StageTable[] stages, List<ShiftRule> rules, int allStages, int most) {
        CombinationLister lister = new CombinationLister(stages, rules, allStages, most);
        lister.visit(0, 0, 0);
        if (lister.isTooLong()) {
            return Optional.empty();
        }
        int size = lister.count;
        lister.triesLeft = Long.MAX_VALUE;
        lister.filling = new Combinations(stages, new long[size], new int[stages.length][size], new byte[size]);
        lister.count = 0;
        lister.visit(0, 0, 0);
        return Optional.of(lister.filling.pick(RadixSort.order(lister.filling.offset), size));
    }

    private void visit(int level, long offset, int worn) {
        if (level == stages.length) {
            if (filling != null) {
                fill(offset, worn);
            }
            count++;
            return;
        }
        StageTable table = stages[level];
        for (int n = table.first; n <= table.last && !isTooLong(); n++) {
            triesLeft--;
            indices[table.stage] = n;
            if (limitsAllow(table.stage)) {
                visit(level + 1, offset + n * table.pitch, wornWith(worn, table.wear(n)));
            }
        }
    }

    private static int wornWith(int worn, int wear) {
        return worn == Combinations.BARRED || wear > 1 ? Combinations.BARRED : worn + wear;
    }

    private boolean limitsAllow(int stage) {
        for (ShiftRule rule : rules) {
            if (rule.concerns(stage) && !rule.canBeKept(indices, stage)) {
                return false;
            }
        }
        return true;
    }

    private void fill(long offset, int worn) {
        filling.offset[count] = offset;
        filling.worn[count] = (byte) worn;
        for (int i = 0; i < stages.length; i++) {
            filling.index[i][count] = indices[stages[i].stage];
        }
    }
}
