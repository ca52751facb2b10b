// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import pitchstack.core.stack.ShiftLimit;

/** One shift limit, checked on indices. */
final class ShiftRule {
    final int lowest;
    final int highest;
    final long limit;
    private final StageTable[] stages;

    /** A limit over some of the stages of an axis. */
    ShiftRule(ShiftLimit limit, StageTable[] stages) {
        this.lowest = limit.lowest();
        this.highest = limit.highest();
        this.limit = limit.limit();
        this.stages = stages;
    }

    boolean concerns(int stage) {
        return lowest <= stage && stage <= highest;
    }

    /** Whether every stage concerned is among these. */
    boolean liesWithin(boolean[] some) {
        for (int j = lowest; j <= highest; j++) {
            if (!some[j]) {
                return false;
            }
        }
        return true;
    }

    /** Whether the limit is kept. */
    boolean isKept(int[] indices) {
        return Math.abs(shift(indices, highest)) <= limit;
    }

    /** Whether the limit can still be kept once the stages up to and including this one have their indices. */
    boolean canBeKept(int[] indices, int known) {
        long low = shift(indices, known);
        long high = low;
        for (int j = known + 1; j <= highest; j++) {
            low += stages[j].lowest();
            high += stages[j].highest();
        }
        return low <= limit && high >= -limit;
    }

    private long shift(int[] indices, int upTo) {
        long sum = 0;
        for (int j = lowest; j <= upTo; j++) {
            sum += indices[j] * stages[j].pitch;
        }
        return sum;
    }
}
