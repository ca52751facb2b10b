// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.Optional;
import pitchstack.core.plan.Soundness;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.Wear;

/** A stage whose every index stands over barred teeth cannot be set. */
public final class AllBarred implements StageCheck {
    @Override
    public Optional<Finding> at(Subject subject, StageSpec stage, int j) {
        if (Soundness.rowProblem(stage, j).isPresent()) {
            return Optional.empty();
        }
        IndexRange range = stage.rows().indices();
        for (int n = range.first(); n <= range.last(); n++) {
            if (stage.rows().wearAt(n) != Wear.BARRED) {
                return Optional.empty();
            }
        }
        return Optional.of(new Finding("all-barred", Severity.ERROR, Place.stage(j), "0 usable indices",
                "1 usable index", "Every one of the " + range.count() + " indices of stage " + stage.title(j)
                        + " stands over barred teeth; unbar some, lengthen a row or ask for fewer engaged teeth."));
    }
}
