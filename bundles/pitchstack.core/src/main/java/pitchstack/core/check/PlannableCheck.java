// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.List;
import pitchstack.core.plan.Soundness;

/** Finds what the planner would refuse, so that an axis without errors can always be planned on. */
final class PlannableCheck implements Check {
    @Override
    public List<Finding> apply(Subject subject) {
        return Soundness.problem(subject.axis())
                .map(sentence -> List.of(new Finding("not-plannable", Severity.ERROR, Place.AXIS, "", "", sentence)))
                .orElse(List.of());
    }
}
