// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.Optional;
import pitchstack.core.stack.StageSpec;

/** Rows that share no tooth hold nothing. */
public final class MinimumEngagedBelowOne implements StageCheck {
    @Override
    public Optional<Finding> at(Subject subject, StageSpec stage, int j) {
        int minimum = stage.rows().minimumEngaged();
        return minimum >= 1 ? Optional.empty() : Optional.of(new Finding("minimum-engaged-below-one",
                Severity.WARNING, Place.stage(j), minimum + " teeth", "1 tooth", "Stage " + stage.title(j)
                        + " asks for " + minimum + " engaged teeth, which counts as 1; enter how many must hold."));
    }
}
