// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.concurrent.atomic.AtomicReferenceArray;

/**
 * Keeps what moves of a block from one place cost, for places asked about before; older ones make room for newer ones.
 * Safe for several threads: at worst two work out the same.
 */
final class MoveCache {
    /** What one cache may hold, about; there are at most seven. */
    private static final int MOST_BYTES = 16 << 20;
    private static final int MOST_SLOTS = 1 << 14;
    /** An effort, and for each direction of the coarse stage a key and a number. */
    private static final int BYTES_A_SETTING = 32;

    private final Block block;
    private final AtomicReferenceArray<BlockMoves> slots;

    MoveCache(Block block) {
        this.block = block;
        long places = 1;
        for (StageTable table : block.stages) {
            places = Math.min(MOST_SLOTS, places * table.count() * (table.cost.reversalMs() > 0 ? 3 : 1));
        }
        long room = MOST_BYTES / ((block.size() + 4L) * BYTES_A_SETTING);
        this.slots = new AtomicReferenceArray<>(block.isTabled() ? (int) Math.max(1, Math.min(room, places)) : 0);
    }

    /** The moves of the block from where its stages stand. */
    BlockMoves of(Moves moves) {
        long start = start(moves);
        if (slots.length() == 0 || start < 0) {
            return new BlockMoves(block, moves, start);
        }
        int slot = (int) (start % slots.length());
        BlockMoves kept = slots.get(slot);
        if (kept == null || kept.start != start) {
            kept = new BlockMoves(block, moves, start);
            slots.set(slot, kept);
        }
        return kept;
    }

    /** The place and, where turning round costs something, the last directions as one number; −1 outside the range. */
    private long start(Moves moves) {
        long start = 0;
        for (StageTable table : block.stages) {
            StageMoves stage = moves.stage(table.stage);
            if (stage.from < table.first || stage.from > table.last) {
                return -1;
            }
            start = start * table.count() + (stage.from - table.first);
            if (table.cost.reversalMs() > 0) {
                start = start * 3 + stage.last.ordinal();
            }
        }
        return start;
    }
}
