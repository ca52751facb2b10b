// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.concurrent.atomic.AtomicReferenceArray;
import pitchstack.core.stack.Direction;

/**
 * Keeps what moves of a block from one place cost, for places asked about before; older ones make room for newer ones.
 * Safe for several threads: at worst two work out the same.
 */
final class MoveCache {
    /** What one cache may hold, about; there are at most seven. */
    private static final int MOST_BYTES = 16 << 20;
    /** An effort, the steps of a move, and for each direction of the coarse stage a key and what belongs to it. */
    private static final int BYTES_A_SETTING = 256;
    private static final int DIRECTIONS = Direction.values().length;

    private final Block block;
    private final AtomicReferenceArray<BlockMoves> slots;

    MoveCache(Block block) {
        this.block = block;
        long places = block.isTabled() ? block.size() : 0;
        for (StageTable table : block.stages) {
            places *= table.cost.reversalMs() > 0 ? DIRECTIONS : 1;
        }
        long room = MOST_BYTES / ((block.size() + 1L) * BYTES_A_SETTING);
        this.slots = new AtomicReferenceArray<>((int) Math.min(places, Math.max(1, room)));
    }

    /**
     * The moves of the block from where its stages stand.
     *
     * @param from the indices they stand at, one a stage of the axis
     */
    BlockMoves of(Moves moves, int[] from) {
        int number = slots.length() == 0 ? -1 : block.number(from);
        if (number < 0) {
            return new BlockMoves(block, moves, number);
        }
        long start = number;
        for (StageTable table : block.stages) {
            if (table.cost.reversalMs() > 0) {
                start = start * DIRECTIONS + moves.stage(table.stage).last.ordinal();
            }
        }
        int slot = (int) (start % slots.length());
        BlockMoves kept = slots.get(slot);
        if (kept == null || kept.start != start) {
            kept = new BlockMoves(block, moves, start);
            slots.set(slot, kept);
        }
        return kept;
    }
}
