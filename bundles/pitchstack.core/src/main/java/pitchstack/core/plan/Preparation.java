// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import pitchstack.core.stack.Approach;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.ShiftLimit;
import pitchstack.core.stack.Wear;

/** What is worked out once for an axis: its stages by index, its travel, and a search space for each kind of teeth. */
final class Preparation {
    final StageTable[] tables;
    final Travel travel;
    final Approach approach;
    /** Every stage is in one of them, lowest first; not to be changed. */
    final Component[] components;
    /** Which of them have limits; not to be changed. */
    final int[] tiedComponents;
    private final long datum;
    private final SearchSpace[] spaces = new SearchSpace[Wear.values().length];

    /** Prepares a sound axis; see {@link Soundness}. */
    Preparation(AxisSpec axis, int mostEntries, double leastGain) {
        tables = new StageTable[axis.stages().size()];
        for (int j = 0; j < tables.length; j++) {
            tables[j] = new StageTable(j, axis.stages().get(j));
        }
        List<ShiftRule> rules = new ArrayList<>();
        for (ShiftLimit limit : axis.shiftLimits()) {
            rules.add(new ShiftRule(limit, tables));
        }
        datum = axis.scale().wrap(axis.datum());
        approach = axis.approach();
        components = Component.of(tables.length, ShiftBand.of(axis)).toArray(Component[]::new);
        tiedComponents = IntStream.range(0, components.length).filter(c -> !components[c].bands().isEmpty()).toArray();
        travel = travel(axis, rules);
        prepareSpaces(rules, mostEntries, leastGain);
    }

    /** The settings over teeth no worse than this. */
    SearchSpace space(Wear worst) {
        return spaces[worst.ordinal()];
    }

    /** What the outermost stage needs the others for. */
    FineSettings fineSettings() {
        SearchSpace usable = space(Wear.WORN);
        return new FineSettings(usable.outer[0].stage,
                usable.outer.length > 1 ? OptionalLong.empty() : OptionalLong.of(usable.list.size()),
                Math.min(usable.outer[0].pitch(), travel.width()));
    }

    /** Whether there is a rule or a limit for which a move between two settings might not be possible. */
    boolean mayStrand() {
        return approach != Approach.EITHER || tiedComponents.length > 0;
    }

    /** The blocks of the list that every space has. */
    Block[] blocks() {
        return spaces[0].list.blocks;
    }

    /** A limit over every stage is one on the place itself, and is taken out of the rules. */
    private Travel travel(AxisSpec axis, List<ShiftRule> rules) {
        long low = 0;
        long high = 0;
        for (StageTable table : tables) {
            low += table.lowest();
            high += table.highest();
        }
        for (ShiftRule rule : List.copyOf(rules)) {
            if (rule.lowest == 0 && rule.highest == tables.length - 1) {
                low = Math.max(low, -rule.limit);
                high = Math.min(high, rule.limit);
                rules.remove(rule);
            }
        }
        return Travel.of(axis, datum + low, datum + high);
    }

    private void prepareSpaces(List<ShiftRule> rules, int mostEntries, double leastGain) {
        List<StageTable> outer = new ArrayList<>();
        List<StageTable> inner = new ArrayList<>(Arrays.asList(tables));
        outer.add(takeLargest(inner));
        Optional<Combinations> list = list(inner, rules, mostEntries);
        while (list.isEmpty()) {
            outer.addAll(takeLargestBlock(inner, rules));
            list = list(inner, rules, mostEntries);
        }
        rules.removeAll(within(rules, inner));
        StageTable[] levels = outer.toArray(StageTable[]::new);
        ShiftRule.Check[][] checks = checks(rules, outer);
        Combinations kept = list.get();
        int[] late = lateComponents(kept.blocks);
        for (int k = spaces.length - 1; k >= 0; k--) {
            Wear worst = Wear.values()[k];
            kept = kept.noWorseThan(worst);
            spaces[k] = new SearchSpace(levels, kept, worst, datum, checks, late, leastGain);
        }
        shareEqualSpaces();
    }

    /** The components with limits that are no block whose efforts are known. */
    private int[] lateComponents(Block[] blocks) {
        return IntStream.of(tiedComponents).filter(c -> Arrays.stream(blocks)
                .noneMatch(block -> block.component == components[c] && block.isTabled())).toArray();
    }

    private Optional<Combinations> list(List<StageTable> inner, List<ShiftRule> rules, int mostEntries) {
        return CombinationLister.list(inner, within(rules, inner), List.of(components), tables.length, mostEntries);
    }

    /** Where no tooth is marked, a search need not be repeated with worse teeth allowed. */
    private void shareEqualSpaces() {
        for (int k = 0; k + 1 < spaces.length; k++) {
            int more = k + 1;
            boolean same = spaces[k].list == spaces[more].list;
            for (StageTable table : spaces[k].outer) {
                for (int n = table.first; n <= table.last && same; n++) {
                    same = table.wear(n) != more;
                }
            }
            if (same) {
                spaces[more] = spaces[k];
            }
        }
    }

    private static StageTable takeLargest(List<StageTable> some) {
        int largest = 0;
        for (int i = 1; i < some.size(); i++) {
            if (some.get(i).count() > some.get(largest).count()) {
                largest = i;
            }
        }
        return some.remove(largest);
    }

    /**
     * The largest stage and all that limits tie to it: a limit between a stage searched by itself and a list would
     * have to be tried on one entry after another.
     */
    private static List<StageTable> takeLargestBlock(List<StageTable> some, List<ShiftRule> rules) {
        List<ShiftRule> ties = within(rules, some);
        List<StageTable> block = new ArrayList<>();
        block.add(takeLargest(some));
        for (int i = 0; i < block.size(); i++) {
            StageTable member = block.get(i);
            for (StageTable other : List.copyOf(some)) {
                if (ties.stream().anyMatch(rule -> rule.concerns(member) && rule.concerns(other))) {
                    block.add(other);
                    some.remove(other);
                }
            }
        }
        return block;
    }

    private static List<ShiftRule> within(List<ShiftRule> rules, List<StageTable> some) {
        return rules.stream().filter(rule -> rule.liesWithin(some)).toList();
    }

    private static ShiftRule.Check[][] checks(List<ShiftRule> rules, List<StageTable> outer) {
        ShiftRule.Check[][] checks = new ShiftRule.Check[outer.size() + 1][];
        for (int level = 0; level < outer.size(); level++) {
            StageTable table = outer.get(level);
            List<StageTable> known = outer.subList(0, level + 1);
            checks[level] = rules.stream().filter(rule -> rule.concerns(table)).map(rule -> rule.given(known))
                    .toArray(ShiftRule.Check[]::new);
        }
        checks[outer.size()] = rules.stream().filter(rule -> !rule.liesWithin(outer)).map(ShiftRule::whole)
                .toArray(ShiftRule.Check[]::new);
        return checks;
    }
}
