// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.List;

/**
 * Finds the settings of least effort within some windows. Each outer stage is walked from where it stands outwards,
 * on the side where the next index costs less, so that its cost only grows, and the walk ends when the cost alone can
 * no longer win; the combinations of the other stages that fall into the window are neighbours in the sorted list. One
 * object serves one search.
 */
final class EffortSearch {
    private final SearchSpace space;
    private final Moves moves;
    private final BlockMoves[] blocks;
    /** By block and setting; null where some are not known. */
    private final long[][] efforts;
    private final int[] indices;
    private final Ranking ranking;
    private Window window;

    private EffortSearch(SearchSpace space, Moves moves, int places) {
        this.space = space;
        this.moves = moves;
        this.blocks = moves.blocks();
        this.efforts = space.separable ? moves.efforts() : null;
        this.indices = new int[moves.count()];
        this.ranking = new Ranking(places);
    }

    /**
     * Searches.
     *
     * @param space where
     * @param windows windows that share no place
     * @param moves the moves from the starting setting
     * @param places how many settings are wanted, at least 1
     * @return the best, best first
     */
    static List<Candidate> best(SearchSpace space, List<Window> windows, Moves moves, int places) {
        EffortSearch search = new EffortSearch(space, moves, places);
        if (!space.isEmpty()) {
            for (Window window : windows) {
                search.window = window;
                if (places > 1 || !KeySearch.search(space, window, moves, search.ranking)) {
                    search.walk(0, space.datum, 0, 0);
                }
            }
        }
        return search.ranking.inOrder();
    }

    private void walk(int level, long base, long effort, int worn) {
        if (!space.canMeet(level, base, low(effort), high(effort))) {
            return;
        }
        if (level == space.outer.length) {
            scan(base, effort, worn);
            return;
        }
        int first = space.first(level, base, low(effort));
        int last = space.last(level, base, high(effort));
        StageTable table = space.outer[level];
        StageMoves stage = moves.stage(table.stage);
        int up = Math.max(first, Math.min(last, stage.from));
        int down = up - 1;
        long upCost = stage.effort(up);
        long downCost = stage.effort(down);
        while (up <= last || down >= first) {
            boolean goUp = down < first || up <= last && upCost <= downCost;
            int n = goUp ? up : down;
            long cost = effort + (goUp ? upCost : downCost);
            if (cost > ranking.effortLimit()) {
                return;
            }
            if (goUp) {
                upCost = stage.effort(++up);
            } else {
                downCost = stage.effort(--down);
            }
            indices[table.stage] = n;
            if (space.allows(level, indices) && stage.allows(n)) {
                walk(level + 1, base + table.offset(n), cost, worn + table.worn(n));
            }
        }
    }

    private void scan(long base, long effort, int worn) {
        Combinations list = space.list;
        long high = high(effort) - base;
        for (int g = list.firstAtLeast(low(effort) - base); g < list.groups() && list.offset[g] <= high; g++) {
            long error = base + list.offset[g] - window.center();
            for (int k = list.start[g]; k < list.start[g + 1]; k++) {
                int entry = list.entry[k];
                long listed = efforts == null ? list.effort(entry, blocks) : list.effort(entry, efforts);
                long cost = effort + listed;
                if (listed >= 0 && cost <= ranking.effortLimit() && Math.abs(error) <= ranking.distanceLimit(cost)) {
                    consider(entry, error, cost, worn);
                }
            }
        }
    }

    private void consider(int entry, long error, long cost, int worn) {
        space.list.copyIndices(entry, indices);
        long extra = space.keepsLimits(space.outer.length, indices)
                ? moves.extraEffort(space.lateComponents, indices, ranking.effortLimit() - cost) : -1;
        if (extra >= 0) {
            ranking.offer(new Candidate(window.center() + error, error, cost + extra, worn + space.list.worn(entry),
                    indices.clone()));
        }
    }

    /** The lowest place at which a setting of at least this effort can still win. */
    private long low(long effort) {
        return Math.max(window.low(), Saturated.subtract(window.center(), ranking.distanceLimit(effort)));
    }

    /** The highest such place. */
    private long high(long effort) {
        return Math.min(window.high(), Saturated.add(window.center(), ranking.distanceLimit(effort)));
    }
}
