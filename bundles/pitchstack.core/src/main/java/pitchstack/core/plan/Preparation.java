// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.ShiftLimit;
import pitchstack.core.stack.Wear;

/** What is worked out once for an axis: its stages by index, its travel, and a search space for each kind of teeth. */
final class Preparation {
    final StageTable[] tables;
    final Travel travel;
    private final SearchSpace[] spaces = new SearchSpace[Wear.values().length];

    /** Prepares a sound axis; see {@link Soundness}. */
    Preparation(AxisSpec axis, int mostEntries) {
        tables = new StageTable[axis.stages().size()];
        for (int j = 0; j < tables.length; j++) {
            tables[j] = new StageTable(j, axis.stages().get(j));
        }
        List<ShiftRule> rules = new ArrayList<>();
        for (ShiftLimit limit : axis.shiftLimits()) {
            rules.add(new ShiftRule(limit, tables));
        }
        long datum = axis.scale().wrap(axis.datum());
        travel = travel(axis, datum, rules);
        prepareSpaces(datum, rules, mostEntries);
    }

    /** The settings over teeth no worse than this. */
    SearchSpace space(Wear worst) {
        return spaces[worst.ordinal()];
    }

    /** A limit over every stage is one on the place itself, and is taken out of the rules. */
    private Travel travel(AxisSpec axis, long datum, List<ShiftRule> rules) {
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

    private void prepareSpaces(long datum, List<ShiftRule> rules, int mostEntries) {
        List<StageTable> outer = new ArrayList<>();
        List<StageTable> inner = new ArrayList<>(Arrays.asList(tables));
        Optional<Combinations> list;
        do {
            outer.add(takeLargest(inner));
            list = CombinationLister.list(inner.toArray(StageTable[]::new), within(rules, inner), tables.length,
                    mostEntries);
        } while (list.isEmpty());
        rules.removeAll(within(rules, inner));
        StageTable[] levels = outer.toArray(StageTable[]::new);
        ShiftRule[][] byLevel = byLevel(rules, outer);
        Combinations kept = list.get();
        for (int k = spaces.length - 1; k >= 0; k--) {
            Wear worst = Wear.values()[k];
            kept = kept.noWorseThan(worst);
            spaces[k] = new SearchSpace(levels, kept, worst, datum, byLevel);
        }
        shareEqualSpaces();
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

    private List<ShiftRule> within(List<ShiftRule> rules, List<StageTable> some) {
        boolean[] listed = new boolean[tables.length];
        some.forEach(table -> listed[table.stage] = true);
        return rules.stream().filter(rule -> rule.liesWithin(listed)).toList();
    }

    private ShiftRule[][] byLevel(List<ShiftRule> rules, List<StageTable> outer) {
        List<ShiftRule> left = new ArrayList<>(rules);
        ShiftRule[][] levels = new ShiftRule[outer.size() + 1][];
        for (int level = 0; level < outer.size(); level++) {
            List<ShiftRule> now = within(left, outer.subList(0, level + 1));
            levels[level] = now.toArray(ShiftRule[]::new);
            left.removeAll(now);
        }
        levels[outer.size()] = left.toArray(ShiftRule[]::new);
        return levels;
    }
}
