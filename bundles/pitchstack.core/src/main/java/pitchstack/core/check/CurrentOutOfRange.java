// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.Optional;
import pitchstack.core.plan.Soundness;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.StageSpec;

/** A stage stands where it has too few engaged teeth. Moves can be planned from there, but not back. */
public final class CurrentOutOfRange implements StageCheck {
    @Override
    public Optional<Finding> at(Subject subject, StageSpec stage, int j) {
        if (j >= subject.current().size() || Soundness.rowProblem(stage, j).isPresent()) {
            return Optional.empty();
        }
        IndexRange range = stage.rows().indices();
        int index = subject.current().index(j);
        return range.contains(index) ? Optional.empty() : Optional.of(new Finding("current-out-of-range",
                Severity.WARNING, Place.stage(j), "index " + index, range.first() + " to " + range.last(),
                "Stage " + stage.title(j) + " stands at index " + index + ", outside " + range.first() + " to "
                        + range.last() + " where enough teeth engage; move it to index " + range.clamp(index)
                        + " or correct the count."));
    }
}
