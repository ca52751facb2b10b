// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The settings of a block that can be moved to, over usable teeth, sorted by what they cost together with the coarse stage:
 * an offset that spares the coarse stage a tooth is worth what the tooth costs. The keys of all blocks and a constant add up
 * to what a setting costs at the least.
 */
final class SortedKeys {
    final int[] setting;
    /** Ascending; in milliseconds, rounded down by up to two. */
    final long[] key;
    final long[] effort;
    final long[] offset;
    /** How many stages stand over worn teeth. */
    final byte[] worn;

    /**
     * @param moves efforts that are known
     * @param msACount what the coarse stage costs for a count of length; below 0 where it moves back
     */
    SortedKeys(BlockMoves moves, double msACount) {
        Block block = moves.block;
        int[] usable = IntStream.range(0, block.size())
                .filter(s -> moves.effort[s] >= 0 && block.worn[s] != Block.BARRED).toArray();
        long[] all = new long[block.size()];
        for (int s : usable) {
            all[s] = (long) Math.floor(moves.effort[s] - msACount * block.offset[s]) - 1;
        }
        setting = IntStream.of(usable).boxed().sorted((a, b) -> Long.compare(all[a], all[b])).mapToInt(s -> s).toArray();
        key = Arrays.stream(setting).mapToLong(s -> all[s]).toArray();
        effort = Arrays.stream(setting).mapToLong(s -> moves.effort[s]).toArray();
        offset = Arrays.stream(setting).mapToLong(s -> block.offset[s]).toArray();
        worn = new byte[setting.length];
        for (int i = 0; i < worn.length; i++) {
            worn[i] = block.worn[setting[i]];
        }
    }

    int size() {
        return key.length;
    }
}
