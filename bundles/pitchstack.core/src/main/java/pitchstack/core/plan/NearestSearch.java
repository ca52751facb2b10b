// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds the setting nearest to a target on one side, of least effort among those at that position. The search
 * narrows: once a setting is known, only places at least as near are looked at. One object serves one search.
 */
final class NearestSearch {
    private final SearchSpace space;
    private final boolean below;
    /**
     * Whether only nearer settings are looked for, and the cheapest at the nearest place afterwards: where stages are walked
     * in one another, too many may stand at one place to look at each.
     */
    private final boolean strict;
    private final Moves moves;
    private final BlockMoves[] blocks;
    private final int[] indices;
    private Candidate best;
    private Window window;
    /** The places that can still win. */
    private long low;
    private long high;

    private NearestSearch(SearchSpace space, boolean below, Moves moves) {
        this.space = space;
        this.below = below;
        this.strict = space.outer.length > 1;
        this.moves = moves;
        this.blocks = moves.blocks();
        this.indices = new int[moves.count()];
    }

    /**
     * Searches.
     *
     * @param space where
     * @param windows windows that lie on one side of their centers
     * @param below on which side
     * @param moves the moves from the starting setting
     * @return the nearest setting, if there is any
     */
    static Optional<Candidate> nearest(SearchSpace space, List<Window> windows, boolean below, Moves moves) {
        NearestSearch search = new NearestSearch(space, below, moves);
        if (!space.isEmpty()) {
            for (Window window : windows) {
                search.enter(window);
            }
        }
        return search.strict && search.best != null ? search.cheapest(windows) : Optional.ofNullable(search.best);
    }

    /** The setting of least effort as near as the best. */
    private Optional<Candidate> cheapest(List<Window> windows) {
        List<Window> places = new ArrayList<>();
        for (Window around : windows) {
            long place = around.center() + (below ? -best.distance() : best.distance());
            if (around.low() <= place && place <= around.high()) {
                places.add(new Window(around.center(), place, place));
            }
        }
        return EffortSearch.best(space, places, moves, 1).stream().findFirst();
    }

    private void enter(Window next) {
        window = next;
        low = next.low();
        high = next.high();
        narrow();
        if (low <= high) {
            walk(0, space.datum, 0, 0);
        }
    }

    private void narrow() {
        if (best == null) {
            return;
        }
        long wanted = strict ? best.distance() - 1 : best.distance();
        if (below) {
            low = Math.max(low, window.center() - wanted);
        } else {
            high = Math.min(high, window.center() + wanted);
        }
    }

    private void walk(int level, long base, long effort, int worn) {
        if (level == space.outer.length) {
            scan(base, effort, worn);
            return;
        }
        if (low > high || !space.canMeet(level, base, low, high)) {
            return;
        }
        StageTable table = space.outer[level];
        int up = space.middle(level, base, below ? high : low);
        int down = up - 1;
        up = Math.max(up, space.first(level, base, low));
        down = Math.min(down, space.last(level, base, high));
        while (up <= space.last(level, base, high) || down >= space.first(level, base, low)) {
            if (up <= space.last(level, base, high)) {
                step(level, up++, base, effort, worn);
            }
            if (down >= space.first(level, base, low)) {
                step(level, down--, base, effort, worn);
            }
        }
    }

    private void step(int level, int n, long base, long effort, int worn) {
        StageTable table = space.outer[level];
        indices[table.stage] = n;
        StageMoves stage = moves.stage(table.stage);
        if (space.allows(level, indices) && stage.allows(n)) {
            walk(level + 1, base + table.offset(n), effort + stage.effort(n), worn + table.worn(n));
        }
    }

    private void scan(long base, long effort, int worn) {
        Combinations list = space.list;
        if (below) {
            for (int g = list.lastAtMost(high - base); g >= 0 && list.offset[g] >= low - base; g--) {
                scan(g, base, effort, worn);
            }
        } else {
            for (int g = list.firstAtLeast(low - base); g < list.groups() && list.offset[g] <= high - base; g++) {
                scan(g, base, effort, worn);
            }
        }
    }

    private void scan(int group, long base, long effort, int worn) {
        long place = base + space.list.offset[group];
        for (int k = space.list.start[group]; k < space.list.start[group + 1]; k++) {
            consider(space.list.entry[k], place, effort, worn);
        }
    }

    private void consider(int entry, long place, long effort, int worn) {
        Combinations list = space.list;
        long listed = list.effort(entry, blocks);
        long cost = effort + listed;
        long error = place - window.center();
        boolean level = best != null && Math.abs(error) == best.distance();
        if (listed < 0 || level && cost > best.effort()) {
            return;
        }
        list.copyIndices(entry, indices);
        long most = level ? best.effort() - cost : Long.MAX_VALUE;
        long extra = space.keepsLimits(space.outer.length, indices)
                ? moves.extraEffort(space.lateComponents, indices, most) : -1;
        if (extra >= 0) {
            Candidate found = new Candidate(place, error, cost + extra, worn + list.worn(entry), indices.clone());
            if (best == null || Candidate.BY_NEARNESS.compare(found, best) < 0) {
                best = found;
                narrow();
            }
        }
    }
}
