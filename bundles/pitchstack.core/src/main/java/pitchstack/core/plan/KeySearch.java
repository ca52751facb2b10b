// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import pitchstack.core.stack.Wear;

/**
 * Finds the setting of least effort in a window by trying the combinations of the blocks in the order of what they cost, for
 * lists so long that many entries fall into the window. A combination leaves the coarse stage one index or none, which
 * follows from its offset; so what the coarse stage costs is, but for less than a tooth, a sum over the blocks as well. A
 * budget bounds the sums that are tried, and grows until nothing beyond it can win. One object serves one search.
 */
final class KeySearch {
    /** Entries in the window for each combination that has to be tried to meet the window once: below it, a scan is faster. */
    static final double LEAST_GAIN = 16;
    /** Tries worth making whatever the gain. */
    private static final double FEW_TRIES = 1000;
    /** Beyond it sums of efforts in floating point might be off by a millisecond. */
    private static final double MOST_MS = 1L << 50;

    private final SearchSpace space;
    private final Window window;
    private final StageTable coarse;
    private final StageMoves stage;
    private final BlockMoves[] blocks;
    private final Ranking ranking;
    private final SortedKeys[] keys;
    /** By block, the least sum of the keys of it and those after it. */
    private final long[] rest;
    private final int[] chosen;
    private int first;
    private int last;
    private long budget;
    private long triesLeft;

    private KeySearch(SearchSpace space, Window window, Moves moves, Ranking ranking, long tries) {
        this.space = space;
        this.window = window;
        this.coarse = space.outer[0];
        this.stage = moves.stage(coarse.stage);
        this.blocks = moves.blocks();
        this.ranking = ranking;
        this.keys = new SortedKeys[blocks.length];
        this.rest = new long[blocks.length + 1];
        this.chosen = new int[blocks.length];
        this.triesLeft = tries;
    }

    /**
     * Searches where that is likely to be worth it.
     *
     * @param ranking of one place
     * @return false if the window has to be searched in another way; what was found till then is in the ranking
     */
    static boolean search(SearchSpace space, Window window, Moves moves, Ranking ranking) {
        double share = (double) (window.high() - window.low()) / space.outer[0].pitch();
        double entries = space.list.size() * share;
        if (!space.separable || space.list.blocks.length == 0 || share > 1 || entries * share < space.leastGain) {
            return false;
        }
        KeySearch search = new KeySearch(space, window, moves, ranking,
                (long) Math.max(FEW_TRIES, entries));
        return search.isExact() && search.search();
    }

    private boolean isExact() {
        return stage.perToothMs * (2.0 * coarse.count() + Math.abs((double) stage.from)) + stage.forwardMs + stage.backMs
                < MOST_MS;
    }

    private boolean search() {
        int from = stage.from;
        int lowest = space.first(0, space.datum, window.low());
        int highest = space.last(0, space.datum, window.high());
        if (lowest <= from && from <= highest) {
            first = from;
            last = from;
            atHome();
        }
        boolean whole = true;
        if (highest > from) {
            first = (int) Math.max(lowest, from + 1L);
            last = highest;
            double teeth = (double) (window.low() - coarse.largestError() - space.datum) / coarse.pitch() - from;
            whole = inOrder(true, stage.forwardMs + stage.perToothMs * teeth);
        }
        if (lowest < from) {
            first = lowest;
            last = (int) Math.min(highest, from - 1L);
            double teeth = from - (double) (window.high() + coarse.largestError() - space.datum) / coarse.pitch();
            whole &= inOrder(false, stage.backMs + stage.perToothMs * teeth);
        }
        return whole;
    }

    /** The coarse stage stays: its cost is lower than any formula for its moves says, so the window is scanned. */
    private void atHome() {
        if (coarse.wear(stage.from) > space.worst.ordinal()) {
            return;
        }
        Combinations list = space.list;
        long base = space.datum + coarse.offset(stage.from);
        for (int g = list.firstAtLeast(window.low() - base); g < list.groups(); g++) {
            long place = base + list.offset[g];
            if (place > window.high()) {
                return;
            }
            for (int k = list.start[g]; k < list.start[g + 1]; k++) {
                long effort = list.effort(list.entry[k], blocks);
                if (effort >= 0 && effort <= ranking.effortLimit()) {
                    int[] indices = new int[space.stages()];
                    list.copyIndices(list.entry[k], indices);
                    offer(stage.from, place, effort, indices);
                }
            }
        }
    }

    /**
     * Tries combinations with the coarse stage on one side of where it stands.
     *
     * @param start with the keys of a combination, what it costs at the least
     * @return false if that took too many tries
     */
    private boolean inOrder(boolean forward, double start) {
        double msACount = (double) stage.perToothMs / coarse.pitch();
        double tries = 2.0 * coarse.pitch() / (window.high() - window.low() + 1.0);
        int each = (int) Math.ceil(Math.pow(tries, 1.0 / blocks.length));
        long wider = 1;
        long most = 0;
        for (int b = blocks.length - 1; b >= 0; b--) {
            keys[b] = blocks[b].keys(forward, msACount);
            int size = keys[b].size();
            if (size == 0) {
                return true;
            }
            rest[b] = rest[b + 1] + keys[b].key[0];
            most += keys[b].key[size - 1];
            wider = Math.max(wider, keys[b].key[Math.min(size - 1, each)] - keys[b].key[0]);
        }
        long least = (long) Math.floor(start) - 1;
        for (long above = wider; triesLeft > 0; above += above / 2 + 1) {
            budget = rest[0] + above;
            visit(0, 0, 0, 0, least);
            if (budget >= most || least + budget >= ranking.effortLimit()) {
                return triesLeft > 0;
            }
        }
        return false;
    }

    private void visit(int block, long key, long offset, long effort, long least) {
        SortedKeys sorted = keys[block];
        boolean clean = space.worst == Wear.CLEAN;
        boolean end = block == keys.length - 1;
        for (int i = 0; i < sorted.size(); i++) {
            long sum = key + sorted.key[i];
            if (sum + rest[block + 1] > budget || least + sum + rest[block + 1] > ranking.effortLimit() || triesLeft <= 0) {
                return;
            }
            if (clean && sorted.worn[i] > 0) {
                continue;
            }
            chosen[block] = sorted.setting[i];
            if (end) {
                triesLeft--;
                place(offset + sorted.offset[i], effort + sorted.effort[i]);
            } else {
                visit(block + 1, sum, offset + sorted.offset[i], effort + sorted.effort[i], least);
            }
        }
    }

    private void place(long offset, long effort) {
        long base = space.datum + offset;
        for (int n = Math.max(first, coarse.firstAtLeast(window.low() - base)); n <= last; n++) {
            long place = base + coarse.offset(n);
            if (place > window.high()) {
                return;
            }
            long cost = effort + stage.effort(n);
            if (cost <= ranking.effortLimit() && coarse.wear(n) <= space.worst.ordinal() && stage.allows(n)) {
                int[] indices = new int[space.stages()];
                for (int b = 0; b < chosen.length; b++) {
                    blocks[b].block.copyIndices(chosen[b], indices);
                }
                offer(n, place, cost, indices);
            }
        }
    }

    private void offer(int n, long place, long effort, int[] indices) {
        indices[coarse.stage] = n;
        int worn = coarse.worn(n);
        for (BlockMoves moves : blocks) {
            for (StageTable table : moves.block.stages) {
                worn += table.worn(indices[table.stage]);
            }
        }
        ranking.offer(new Candidate(place, place - window.center(), effort, worn, indices));
    }
}
