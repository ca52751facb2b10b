// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.List;

/** A tolerance is a distance to both sides. */
public final class ToleranceNegative implements Check {
    @Override
    public List<Finding> apply(Subject subject) {
        long tolerance = subject.axis().tolerance();
        if (tolerance >= 0) {
            return List.of();
        }
        String value = subject.axis().scale().format(tolerance);
        return List.of(new Finding("tolerance-negative", Severity.ERROR, Place.AXIS, value, "at least 0",
                "The tolerance is " + value + ", which no position meets; enter 0 or more."));
    }
}
