// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Lists the settings of one block that keep the shift limits within it. One object serves one list. */
final class BlockLister {
    private static final int FIRST_ROOM = 64;

    private final StageTable[] stages;
    /** What the limits say of each stage once those before it have their indices. */
    private final ShiftRule.Check[][] checks;
    private final int most;
    private final int[] indices;
    private long triesLeft;
    private int count;
    private int[][] index;
    private long[] offset = new long[FIRST_ROOM];
    private byte[] worn = new byte[FIRST_ROOM];

    private BlockLister(List<StageTable> some, List<ShiftRule> rules, int allStages, int most, long tries) {
        this.stages = some.toArray(StageTable[]::new);
        this.checks = new ShiftRule.Check[stages.length][];
        for (int level = 0; level < stages.length; level++) {
            StageTable table = stages[level];
            List<StageTable> known = some.subList(0, level + 1);
            checks[level] = rules.stream().filter(rule -> rule.concerns(table)).map(rule -> rule.given(known))
                    .toArray(ShiftRule.Check[]::new);
        }
        this.most = most;
        this.triesLeft = tries;
        this.indices = new int[allStages];
        this.index = new int[stages.length][FIRST_ROOM];
    }

    /**
     * Lists settings.
     *
     * @param stages neighbouring stages, lowest first, at least one
     * @param rules the limits that concern these stages alone
     * @param component the component that these stages are, or null
     * @param allStages how many stages the axis has
     * @param most the most settings to list
     * @param tries how many indices may be tried
     * @return the block, or empty if it would be larger or take more tries
     */
    static Optional<Block> list(List<StageTable> stages, List<ShiftRule> rules, Component component, int allStages,
            int most, long tries) {
        BlockLister lister = new BlockLister(stages, rules, allStages, most, tries);
        lister.visit(0, 0, 0);
        if (lister.isTooLong()) {
            return Optional.empty();
        }
        lister.resize(lister.count);
        return Optional.of(new Block(lister.stages, lister.index, lister.offset, lister.worn, component));
    }

    private boolean isTooLong() {
        return count > most || triesLeft < 0;
    }

    private void visit(int level, long sum, int wornStages) {
        if (level == stages.length) {
            add(sum, wornStages);
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
        return worn == Block.BARRED || wear > 1 ? Block.BARRED : worn + wear;
    }

    private boolean limitsAllow(int level) {
        for (ShiftRule.Check check : checks[level]) {
            if (!check.allows(indices)) {
                return false;
            }
        }
        return true;
    }

    private void add(long sum, int wornStages) {
        if (count == offset.length) {
            resize(2 * count);
        }
        offset[count] = sum;
        worn[count] = (byte) wornStages;
        for (int i = 0; i < stages.length; i++) {
            index[i][count] = indices[stages[i].stage];
        }
        count++;
    }

    private void resize(int room) {
        offset = Arrays.copyOf(offset, room);
        worn = Arrays.copyOf(worn, room);
        for (int i = 0; i < stages.length; i++) {
            index[i] = Arrays.copyOf(index[i], room);
        }
    }
}
