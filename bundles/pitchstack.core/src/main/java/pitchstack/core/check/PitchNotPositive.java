// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.List;
import pitchstack.core.plan.Unsound.Cause;

/** A pitch must be above 0. */
public final class PitchNotPositive implements Check {
    @Override
    public List<Finding> apply(Subject subject) {
        return Unplannable.findings(subject, "pitch-not-positive", Cause.PITCH_NOT_POSITIVE);
    }
}
