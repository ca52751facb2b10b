// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.List;
import pitchstack.core.plan.Unsound.Cause;

/** Numbers beyond what can be planned with exactly, or at all. */
public final class NumbersTooLarge implements Check {
    @Override
    public List<Finding> apply(Subject subject) {
        return Unplannable.findings(subject, "numbers-too-large", Cause.TOO_MANY_STAGES,
                Cause.PITCH_ABOVE_TURN, Cause.ROW_TOO_LONG, Cause.TOO_LARGE);
    }
}
