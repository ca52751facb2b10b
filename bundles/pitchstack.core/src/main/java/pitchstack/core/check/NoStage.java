// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.List;
import pitchstack.core.plan.Unsound.Cause;

/** An axis without stages moves nothing. */
public final class NoStage implements Check {
    @Override
    public List<Finding> apply(Subject subject) {
        return Unplannable.findings(subject, "no-stage", Cause.NO_STAGE);
    }
}
