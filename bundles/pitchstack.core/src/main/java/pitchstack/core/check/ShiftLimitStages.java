// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.List;
import pitchstack.core.plan.Unsound.Cause;

/** A shift limit must name stages that exist, the lower one first. */
public final class ShiftLimitStages implements Check {
    @Override
    public List<Finding> apply(Subject subject) {
        return Unplannable.findings(subject, "shift-limit-stages", Cause.SHIFT_LIMIT_STAGES);
    }
}
