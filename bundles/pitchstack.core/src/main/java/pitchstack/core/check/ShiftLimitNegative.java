// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.List;
import pitchstack.core.plan.Unsound.Cause;

/** A shift limit is a distance to both sides. */
public final class ShiftLimitNegative implements Check {
    @Override
    public List<Finding> apply(Subject subject) {
        return Unplannable.findings(subject, "shift-limit-negative", Cause.SHIFT_LIMIT_NEGATIVE);
    }
}
