// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.Wear;

/**
 * Finds moves to many targets from one setting. What depends on the setting alone is worked out once: what each offset of
 * the fine stages costs. A target then asks for a look at each index of the coarse stage that can come near it, from where
 * that stands outwards, and only while its cost alone can still win. Every answer is the one {@link Planner#plan} gives
 * without alternatives. One object serves one thread; several may share a planner.
 */
public final class TableQuery {
    /** Targets for which the preparation takes about as long as a search for each: as many as entries divided by this. */
    private static final int ENTRIES_PER_TARGET = 1000;

    private final Planner planner;
    private final Preparation prepared;
    private final Setting from;
    private final Directions last;
    private final WornPolicy worn;
    private final Moves moves;
    /** With teeth no worse than are readily taken; null where each target has to be searched for. */
    private final GroupEfforts readily;
    private GroupEfforts atMost;
    private final StageTable coarse;
    private final StageMoves stage;
    /** The best so far. */
    private GroupEfforts in;
    private long effort;
    private long error;
    private long center;
    private int index;
    private int group;

    TableQuery(Planner planner, Setting from, Directions last, WornPolicy worn) {
        this.planner = planner;
        this.prepared = planner.prepared();
        this.from = from;
        this.last = last;
        this.worn = worn;
        this.moves = Moves.from(prepared, from, last);
        SearchSpace space = prepared.space(worn == WornPolicy.ALLOW ? Wear.WORN : Wear.CLEAN);
        this.readily = space.separable ? new GroupEfforts(space, moves) : null;
        this.coarse = space.outer[0];
        this.stage = moves.stage(coarse.stage);
    }

    /** Whether to prepare for a number of targets takes less time than to search for each. */
    static boolean pays(Planner planner, int targets) {
        return (long) targets * ENTRIES_PER_TARGET >= planner.prepared().space(Wear.WORN).list.size();
    }

    /**
     * The least effort of reaching a target, in milliseconds; empty if it is not reached.
     *
     * @param target a count of the axis's scale
     * @param tolerance the largest error that counts as reached, itself included; at least 0
     */
    public OptionalLong effortMs(long target, long tolerance) {
        if (readily == null) {
            return planned(target, tolerance).map(p -> OptionalLong.of(p.effortMs())).orElse(OptionalLong.empty());
        }
        return search(target, tolerance) ? OptionalLong.of(effort) : OptionalLong.empty();
    }

    /**
     * The setting of least effort for a target; empty if it is not reached.
     *
     * @param target a count of the axis's scale
     * @param tolerance the largest error that counts as reached, itself included; at least 0
     */
    public Optional<TableEntry> find(long target, long tolerance) {
        if (readily == null) {
            return planned(target, tolerance)
                    .map(p -> new TableEntry(p.setting(), p.position(), p.error(), p.effortMs()));
        }
        if (!search(target, tolerance)) {
            return Optional.empty();
        }
        long position = planner.axis().scale().wrap(center + error);
        return Optional.of(new TableEntry(Setting.of(indices(index, in.best[group])), position, error, effort));
    }

    /**
     * The whole answer for a target, the steps of the move included, or the nearest positions and the reason.
     *
     * @param target a count of the axis's scale
     * @param tolerance the largest error that counts as reached, itself included; at least 0
     */
    public Answer answer(long target, long tolerance) {
        if (readily == null || !search(target, tolerance)) {
            return planner.plan(request(target, tolerance));
        }
        int entry = in.best[group];
        Candidate found = new Candidate(center + error, error, effort, worn(index, entry), indices(index, entry));
        return new Answer.Reached(planner.planned(found, planner.axis().scale().wrap(target), moves), List.of());
    }

    private Optional<PlannedSetting> planned(long target, long tolerance) {
        return planner.plan(request(target, tolerance)) instanceof Answer.Reached reached ? Optional.of(reached.best())
                : Optional.empty();
    }

    private PlanRequest request(long target, long tolerance) {
        return new PlanRequest(target, tolerance, from, last, worn, 0);
    }

    private boolean search(long target, long tolerance) {
        if (tolerance < 0) {
            throw new IllegalArgumentException("The tolerance must be at least 0, not " + tolerance);
        }
        List<Window> windows = prepared.travel.within(planner.axis().scale().wrap(target), tolerance);
        return search(windows, readily) || worn == WornPolicy.AVOID && prepared.space(Wear.WORN) != readily.space
                && search(windows, atMost());
    }

    private GroupEfforts atMost() {
        if (atMost == null) {
            atMost = new GroupEfforts(prepared.space(Wear.WORN), moves);
        }
        return atMost;
    }

    private boolean search(List<Window> windows, GroupEfforts groups) {
        in = groups;
        effort = Long.MAX_VALUE;
        if (!groups.space.isEmpty()) {
            for (int w = 0; w < windows.size(); w++) {
                walk(windows.get(w));
            }
        }
        return effort < Long.MAX_VALUE;
    }

    /** Walks the coarse stage outwards, on the side where the next index costs less. */
    private void walk(Window window) {
        SearchSpace space = in.space;
        int lowest = space.first(0, space.datum, window.low());
        int highest = space.last(0, space.datum, window.high());
        int up = Math.max(lowest, Math.min(highest, stage.from));
        int down = up - 1;
        long upCost = stage.effort(up);
        long downCost = stage.effort(down);
        while (up <= highest || down >= lowest) {
            boolean goUp = down < lowest || up <= highest && upCost <= downCost;
            int n = goUp ? up : down;
            long cost = goUp ? upCost : downCost;
            if (in.all > effort - cost) {
                return;
            }
            if (goUp) {
                upCost = stage.effort(++up);
            } else {
                downCost = stage.effort(--down);
            }
            if (coarse.wear(n) <= space.worst.ordinal() && stage.allows(n)) {
                scan(window, n, cost);
            }
        }
    }

    private void scan(Window window, int n, long cost) {
        long[] offset = in.space.list.offset;
        long base = in.space.datum + coarse.offset(n);
        long high = window.high() - base;
        int g = in.space.list.firstAtLeast(window.low() - base);
        while (g < offset.length && offset[g] <= high) {
            int end = Math.min(offset.length, GroupEfforts.nextRun(g));
            if (in.isRunAbove(g, effort - cost)) {
                g = end;
                continue;
            }
            for (; g < end && offset[g] <= high; g++) {
                long least = in.least[g];
                if (least <= effort - cost && least != GroupEfforts.NO_WAY) {
                    offer(window, n, g, cost + least, base + offset[g] - window.center());
                }
            }
        }
    }

    private void offer(Window window, int n, int g, long cost, long off) {
        if (cost < effort || isBetter(n, g, off)) {
            effort = cost;
            error = off;
            index = n;
            group = g;
            center = window.center();
        }
    }

    /** Whether a setting of the same effort comes before the best in the order of {@link Candidate#BY_EFFORT}. */
    private boolean isBetter(int n, int g, long off) {
        if (Math.abs(off) != Math.abs(error)) {
            return Math.abs(off) < Math.abs(error);
        }
        Candidate one = new Candidate(0, off, 0, worn(n, in.best[g]), indices(n, in.best[g]));
        Candidate other = new Candidate(0, error, 0, worn(index, in.best[group]), indices(index, in.best[group]));
        return Candidate.BY_EFFORT.compare(one, other) < 0;
    }

    private int worn(int n, int entry) {
        return coarse.worn(n) + in.space.list.worn(entry);
    }

    private int[] indices(int n, int entry) {
        int[] indices = new int[moves.count()];
        indices[coarse.stage] = n;
        in.space.list.copyIndices(entry, indices);
        return indices;
    }
}
