// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.fit;

import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.ShiftLimit;
import pitchstack.core.stack.Wear;

/** Which settings of an axis may be measured: in range, not over barred teeth, within the stops and the shift limits. */
public final class Allowed {
    private final AxisSpec axis;

    /** For an axis. */
    public Allowed(AxisSpec axis) {
        this.axis = axis;
    }

    /** Whether a setting, with an index for every stage, may be measured. */
    public boolean allows(Setting setting) {
        for (int j = 0; j < axis.stages().size(); j++) {
            if (!axis.stages().get(j).rows().indices().contains(setting.index(j))) {
                return false;
            }
        }
        return axis.wearAt(setting) != Wear.BARRED && isWithinStops(axis.position(setting))
                && axis.shiftLimits().stream().allMatch(limit -> keeps(limit, setting));
    }

    private boolean isWithinStops(long position) {
        return axis.low().stream().allMatch(low -> position >= low)
                && axis.high().stream().allMatch(high -> position <= high);
    }

    private boolean keeps(ShiftLimit limit, Setting setting) {
        long shift = 0;
        for (int j = limit.lowest(); j <= limit.highest(); j++) {
            shift += axis.stages().get(j).offset(setting.index(j));
        }
        return Math.abs(shift) <= limit.limit();
    }

    /**
     * The allowed setting nearest to one with a stage at an index: only this stage moves, towards where it stands in the
     * home setting, which it is if nothing else is allowed.
     */
    public Setting towards(Setting home, int stage, int index) {
        IndexRange range = axis.stages().get(stage).rows().indices();
        int from = range.isEmpty() ? home.index(stage) : range.clamp(index);
        int step = Integer.signum(home.index(stage) - from);
        for (int n = from; n != home.index(stage); n += step) {
            if (allows(home.with(stage, n))) {
                return home.with(stage, n);
            }
        }
        return home;
    }
}
