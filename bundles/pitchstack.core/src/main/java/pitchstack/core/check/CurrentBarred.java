// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.Optional;
import pitchstack.core.plan.Soundness;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.Wear;

/** A stage stands over barred teeth. Moves can be planned from there, but not back. */
public final class CurrentBarred implements StageCheck {
    @Override
    public Optional<Finding> at(Subject subject, StageSpec stage, int j) {
        if (j >= subject.current().size() || Soundness.rowProblem(stage, j).isPresent()) {
            return Optional.empty();
        }
        int index = subject.current().index(j);
        boolean barred = stage.rows().indices().contains(index) && stage.rows().wearAt(index) == Wear.BARRED;
        return !barred ? Optional.empty() : Optional.of(new Finding("current-barred", Severity.WARNING, Place.stage(j),
                "index " + index, "no barred tooth", "Stage " + stage.title(j) + " stands at index " + index
                        + " over barred teeth; move it to another index before work is done there."));
    }
}
