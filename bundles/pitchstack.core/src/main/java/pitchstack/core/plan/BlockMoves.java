// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

/**
 * What it costs to move the stages of a block from one place to each of its settings. Where the block is small enough the
 * costs are worked out at once and exact, further releases for taking turns included; else each is worked out when asked
 * for, and is what it costs at the least.
 */
final class BlockMoves {
    /** In place of an effort: the setting cannot be moved to. */
    static final long NO_WAY = -1;

    /** The place moved from, as {@link MoveCache} numbers them. */
    final long start;
    final Block block;
    /** By setting, in milliseconds; null where they are worked out when asked for. */
    final long[] effort;
    /** By setting, the steps of the move; null where the setting cannot be moved to, and all null like the efforts. */
    private final MoveSplitter.Split[] split;
    /** Only for efforts that are worked out when asked for. */
    private final Moves moves;
    private volatile SortedKeys up;
    private volatile SortedKeys down;

    BlockMoves(Block block, Moves moves, long start) {
        this.start = start;
        this.block = block;
        boolean tabled = block.isTabled();
        this.effort = tabled ? new long[block.size()] : null;
        this.split = tabled ? new MoveSplitter.Split[block.size()] : null;
        this.moves = tabled ? null : moves;
        if (tabled) {
            workOut(moves);
        }
    }

    private void workOut(Moves all) {
        MoveOrder order = all.order(block.component);
        int[] indices = new int[all.count()];
        for (int s = 0; s < effort.length; s++) {
            effort[s] = least(block, all, s);
            if (effort[s] != NO_WAY) {
                block.copyIndices(s, indices);
                split[s] = order.find(indices, Long.MAX_VALUE);
                effort[s] = split[s] == null ? NO_WAY : effort[s] + split[s].extraMs();
            }
        }
    }

    /** The steps to a setting that can be moved to, stage and index by step; only where efforts are worked out at once. */
    int[] steps(int setting) {
        return split[setting].steps();
    }

    private static long least(Block block, Moves moves, int setting) {
        long sum = 0;
        for (int i = 0; i < block.stages.length; i++) {
            StageMoves stage = moves.stage(block.stages[i].stage);
            int to = block.index[i][setting];
            if (!stage.allows(to)) {
                return NO_WAY;
            }
            sum += stage.effort(to);
        }
        return sum;
    }

    /** The effort of moving to a setting, or {@link #NO_WAY}. */
    long effort(int setting) {
        return effort != null ? effort[setting] : least(block, moves, setting);
    }

    /**
     * The settings by what they cost together with the coarse stage; only where efforts are worked out at once.
     *
     * @param forward which way the coarse stage moves
     * @param msACount what it costs for a count of length, the same whenever asked
     */
    SortedKeys keys(boolean forward, double msACount) {
        SortedKeys kept = forward ? up : down;
        if (kept == null) {
            kept = new SortedKeys(this, forward ? msACount : -msACount);
            if (forward) {
                up = kept;
            } else {
                down = kept;
            }
        }
        return kept;
    }
}
