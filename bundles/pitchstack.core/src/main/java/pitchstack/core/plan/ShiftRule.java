// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import pitchstack.core.stack.ShiftLimit;

/** One shift limit of an axis. */
final class ShiftRule {
    /** What the limit says of the stages whose indices are known: their own shift stays between two bounds. */
    static final class Check {
        private final StageTable[] known;
        private final long low;
        private final long high;

        private Check(StageTable[] known, long low, long high) {
            this.known = known;
            this.low = low;
            this.high = high;
        }

        /** Whether the limit is kept or, with stages still unknown, can be. */
        boolean allows(int[] indices) {
            long shift = 0;
            for (StageTable table : known) {
                shift += table.offset(indices[table.stage]);
            }
            return low <= shift && shift <= high;
        }
    }

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

    boolean concerns(StageTable table) {
        return lowest <= table.stage && table.stage <= highest;
    }

    /** Whether every stage concerned is among these. */
    boolean liesWithin(List<StageTable> some) {
        return IntStream.rangeClosed(lowest, highest).allMatch(j -> some.contains(stages[j]));
    }

    /** The check that can be made once the indices of all stages are known. */
    Check whole() {
        return given(List.of(stages));
    }

    /** The check that can be made once the indices of these stages are known, of the concerned and of others. */
    Check given(List<StageTable> some) {
        long restLow = 0;
        long restHigh = 0;
        for (int j = lowest; j <= highest; j++) {
            if (!some.contains(stages[j])) {
                restLow += stages[j].lowest();
                restHigh += stages[j].highest();
            }
        }
        StageTable[] known = Arrays.stream(stages).filter(some::contains).filter(this::concerns)
                .toArray(StageTable[]::new);
        return new Check(known, Saturated.subtract(-limit, restHigh), Saturated.subtract(limit, restLow));
    }
}
