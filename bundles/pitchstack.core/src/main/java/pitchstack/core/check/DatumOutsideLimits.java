// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.List;
import pitchstack.core.stack.AxisSpec;

/** With every index at 0 the carriage would stand beyond a stop. Linear axes only. */
public final class DatumOutsideLimits implements Check {
    @Override
    public List<Finding> apply(Subject subject) {
        AxisSpec axis = subject.axis();
        boolean below = axis.low().isPresent() && axis.datum() < axis.low().getAsLong();
        boolean above = axis.high().isPresent() && axis.datum() > axis.high().getAsLong();
        if (axis.scale().turn() > 0 || below == above) {
            return List.of();
        }
        String datum = axis.scale().format(axis.datum());
        String limit = axis.scale().format((below ? axis.low() : axis.high()).getAsLong());
        return List.of(new Finding("datum-outside-limits", Severity.NOTE, Place.AXIS, datum, limit,
                "With every index at 0 the carriage stands at " + datum + (below ? ", below" : ", above")
                        + " the travel limit " + limit + "; count from a setting that the device can stand in."));
    }
}
