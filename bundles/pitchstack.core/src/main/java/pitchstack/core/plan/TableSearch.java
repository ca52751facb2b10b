// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.List;

/**
 * Finds the setting of least effort for one target after another, from one setting and over one kind of teeth. A narrow
 * window is met by neighbours in {@link LapOrder}, errors of single rack teeth included by making the window wider; for
 * others the coarse stage is walked outwards as in {@link EffortSearch}.
 */
final class TableSearch {
    private final GroupEfforts groups;
    private final StageTable coarse;
    private final StageMoves stage;
    private final int stages;
    /** Null where numbers are too large for it. */
    private final LapOrder order;
    /** The best so far. */
    private long effort;
    private long error;
    private long center;
    private int index;
    private int group;

    TableSearch(SearchSpace space, Moves moves) {
        this.groups = new GroupEfforts(space, moves);
        this.coarse = space.outer[0];
        this.stage = moves.stage(coarse.stage);
        this.stages = moves.count();
        this.order = LapOrder.isSafe(groups, coarse, stage) ? new LapOrder(groups, coarse.pitch(), stage.perToothMs) : null;
    }

    SearchSpace space() {
        return groups.space;
    }

    /** Searches windows that share no place; whether there is a setting. */
    boolean search(List<Window> windows) {
        effort = Long.MAX_VALUE;
        if (groups.all != GroupEfforts.NO_WAY) {
            for (int w = 0; w < windows.size(); w++) {
                search(windows.get(w));
            }
        }
        return isFound();
    }

    boolean isFound() {
        return effort < Long.MAX_VALUE;
    }

    /** The effort of what was found. */
    long effort() {
        return effort;
    }

    /** What was found. */
    Candidate best() {
        int entry = groups.best[group];
        return new Candidate(center + error, error, effort, worn(index, entry), indices(index, entry));
    }

    private void search(Window window) {
        long low = window.low() - coarse.largestError() - groups.space.datum;
        long width = window.high() - window.low() + 2 * coarse.largestError();
        if (order == null || !order.suits(width, coarse.pitch())) {
            walk(window);
            return;
        }
        int lap = (int) Math.floorDiv(low, coarse.pitch());
        long from = low - lap * coarse.pitch();
        lookUp(window, lap, from, Math.min(from + width, coarse.pitch() - 1));
        if (from + width >= coarse.pitch()) {
            lookUp(window, lap + 1, 0, from + width - coarse.pitch());
        }
    }

    /**
     * Looks at the offsets that lie some way into their laps.
     *
     * @param laps the laps of offset and coarse index together
     */
    private void lookUp(Window window, int laps, long from, long to) {
        long teethMs = stage.perToothMs * ((long) laps - stage.from);
        // A start to the side on which the coarse stage certainly lies is paid in any case.
        long forwardMs = teethMs + ((long) laps - order.highestLap > stage.from ? stage.forwardMs : 0);
        long backMs = -teethMs + ((long) laps - order.lowestLap < stage.from ? stage.backMs : 0);
        int size = order.rest.length;
        for (int i = order.firstAtLeast(from); i < size && order.rest[i] <= to; ) {
            int end = Math.min(size, LapOrder.nextRun(i));
            if (order.isRunAbove(i, forwardMs, backMs, effort)) {
                i = end;
                continue;
            }
            for (; i < end && order.rest[i] <= to; i++) {
                long n = (long) laps - order.lap[i];
                if (order.least[i] <= effort && n >= coarse.first && n <= coarse.last) {
                    consider(window, (int) n, order.group[i], order.least[i]);
                }
            }
        }
    }

    private void consider(Window window, int n, int g, long least) {
        long cost = stage.effort(n);
        if (least == GroupEfforts.NO_WAY || least > effort - cost) {
            return;
        }
        long place = groups.space.datum + coarse.offset(n) + groups.space.list.offset[g];
        if (window.low() <= place && place <= window.high()
                && coarse.wear(n) <= groups.space.worst.ordinal() && stage.allows(n)) {
            offer(window, n, g, cost + least, place - window.center());
        }
    }

    /** Walks the coarse stage outwards, on the side where the next index costs less. */
    private void walk(Window window) {
        SearchSpace space = groups.space;
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
            if (groups.all > effort - cost) {
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
        long[] offset = groups.space.list.offset;
        long base = groups.space.datum + coarse.offset(n);
        long high = window.high() - base;
        int g = groups.space.list.firstAtLeast(window.low() - base);
        while (g < offset.length && offset[g] <= high) {
            int end = Math.min(offset.length, GroupEfforts.nextRun(g));
            if (groups.isRunAbove(g, effort - cost)) {
                g = end;
                continue;
            }
            for (; g < end && offset[g] <= high; g++) {
                long least = groups.least[g];
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
        Candidate one = new Candidate(0, off, 0, worn(n, groups.best[g]), indices(n, groups.best[g]));
        Candidate other = new Candidate(0, error, 0, worn(index, groups.best[group]), indices(index, groups.best[group]));
        return Candidate.BY_EFFORT.compare(one, other) < 0;
    }

    private int worn(int n, int entry) {
        return coarse.worn(n) + groups.space.list.worn(entry);
    }

    private int[] indices(int n, int entry) {
        int[] indices = new int[stages];
        indices[coarse.stage] = n;
        groups.space.list.copyIndices(entry, indices);
        return indices;
    }
}
