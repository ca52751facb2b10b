// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Lists the combinations of some stages that keep the shift limits among them, over teeth of any kind. */
final class CombinationLister {
    /**
     * The most entries of a list: about 90 MB where every offset is different, and twice that while it is sorted. Stages
     * whose combinations would be more are searched one by one instead.
     */
    static final int MOST_ENTRIES = 1 << 22;
    /** Indices tried for each entry allowed: limits that reject more than this are better applied one by one, too. */
    private static final long TRIES_PER_ENTRY = 16;
    private static final long MOST_TRIES = 1L << 24;

    private CombinationLister() { }

    /**
     * Lists combinations.
     *
     * @param stages the stages to combine, lowest first; none gives one combination at offset 0
     * @param rules the limits that concern these stages alone
     * @param components the components of all stages of the axis
     * @param allStages how many stages the axis has
     * @param most the most entries to list
     * @return the list, or empty if it would be longer or take too many tries
     */
    static Optional<Combinations> list(List<StageTable> stages, List<ShiftRule> rules, List<Component> components,
            int allStages, int most) {
        long tries = Math.min(MOST_TRIES, TRIES_PER_ENTRY * most);
        List<Block> blocks = new ArrayList<>();
        long entries = 1;
        int bits = 0;
        for (List<StageTable> tied : tied(stages, rules)) {
            StageTable[] array = tied.toArray(StageTable[]::new);
            Component component = components.stream().filter(c -> c.isMadeOf(array)).findFirst().orElse(null);
            List<ShiftRule> own = rules.stream().filter(rule -> rule.liesWithin(tied)).toList();
            Optional<Block> block = BlockLister.list(tied, own, component, allStages, most, tries);
            if (block.isEmpty()) {
                return Optional.empty();
            }
            blocks.add(block.get());
            entries *= block.get().size();
            bits += Combinations.bits(block.get());
            if (entries > most || bits >= Integer.SIZE) {
                return Optional.empty();
            }
        }
        return Optional.of(new OffsetSort(blocks.toArray(Block[]::new), (int) entries).sorted());
    }

    /** The stages in groups that no limit ties to one another; as a limit is over neighbours, so are the groups. */
    private static List<List<StageTable>> tied(List<StageTable> stages, List<ShiftRule> rules) {
        List<List<StageTable>> groups = new ArrayList<>();
        for (StageTable table : stages) {
            int last = groups.size() - 1;
            boolean joins = last >= 0 && rules.stream().anyMatch(rule -> rule.concerns(table)
                    && groups.get(last).stream().anyMatch(rule::concerns));
            if (!joins) {
                groups.add(new ArrayList<>());
            }
            groups.get(groups.size() - 1).add(table);
        }
        return groups;
    }
}
