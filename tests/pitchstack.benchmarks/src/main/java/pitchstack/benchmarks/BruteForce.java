// SPDX-License-Identifier: EPL-2.0
package pitchstack.benchmarks;

import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.ShiftLimit;
import pitchstack.core.stack.StageSpec;

/** One target by trying every setting, a pair that breaks its limit left out at once. */
final class BruteForce {
    /** For a target that cannot be reached. */
    static final long NONE = -1;
    private final AxisSpec axis;
    private final int stages;
    private final long[] pitch;
    private final long[] limit;
    private final IndexRange[] range;
    private int[] from;
    private long low;
    private long high;
    private long best;

    /** A search for one of the problems, whose first stage is the rack and whose limits tie pairs. */
    BruteForce(AxisSpec axis) {
        this.axis = axis;
        this.stages = axis.stages().size();
        this.pitch = axis.stages().stream().mapToLong(StageSpec::pitch).toArray();
        this.limit = axis.shiftLimits().stream().mapToLong(ShiftLimit::limit).toArray();
        this.range = axis.stages().stream().map(s -> s.rows().indices()).toArray(IndexRange[]::new);
    }

    /** The least effort in milliseconds, or {@link #NONE}. */
    long leastEffort(long target, long tolerance, Setting start) {
        from = start.toArray();
        low = Math.max(target - tolerance, axis.low().orElseThrow());
        high = Math.min(target + tolerance, axis.high().orElseThrow());
        best = Long.MAX_VALUE;
        visit(0, 0, 0, 0);
        return best == Long.MAX_VALUE ? NONE : best;
    }

    private void visit(int stage, long place, long below, long effort) {
        if (stage == stages) {
            if (low <= place && place <= high) {
                best = Math.min(best, effort);
            }
            return;
        }
        boolean upper = stage > 0 && stage % 2 == 0;
        for (int n = range[stage].first(); n <= range[stage].last(); n++) {
            long shift = n * pitch[stage];
            if (!upper || Math.abs(below + shift) <= limit[stage / 2 - 1]) {
                visit(stage + 1, place + shift, shift, effort + effort(stage, n));
            }
        }
    }

    private long effort(int stage, int n) {
        int teeth = Math.abs(n - from[stage]);
        EffortCost cost = axis.stages().get(stage).cost();
        return teeth == 0 ? 0 : cost.releaseMs() + cost.perToothMs() * teeth;
    }
}
