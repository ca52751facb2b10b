// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.List;
import pitchstack.core.stack.AxisSpec;

/** The low stop must not stand above the high one. On a rotary axis it may: the way up then leads over 0. */
public final class LimitsReversed implements Check {
    @Override
    public List<Finding> apply(Subject subject) {
        AxisSpec axis = subject.axis();
        if (axis.scale().turn() > 0 || axis.low().isEmpty() || axis.high().isEmpty()
                || axis.low().getAsLong() <= axis.high().getAsLong()) {
            return List.of();
        }
        String low = axis.scale().format(axis.low().getAsLong());
        String high = axis.scale().format(axis.high().getAsLong());
        return List.of(new Finding("limits-reversed", Severity.ERROR, Place.AXIS, low, high, "The low travel limit "
                + low + " lies above the high one, " + high + ", so no position is left; swap them."));
    }
}
