// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.Arrays;
import java.util.List;
import pitchstack.core.plan.Soundness;
import pitchstack.core.plan.Unsound;

/** Turns what the planner refuses into findings. */
final class Unplannable {
    private Unplannable() { }

    /** The findings of one check: what the planner refuses for these causes, each an error. */
    static List<Finding> findings(Subject subject, String id, Unsound.Cause... causes) {
        return Soundness.problems(subject.axis()).stream()
                .filter(problem -> Arrays.asList(causes).contains(problem.cause()))
                .map(problem -> new Finding(id, Severity.ERROR, place(problem), problem.value(), problem.limit(),
                        problem.sentence()))
                .toList();
    }

    private static Place place(Unsound problem) {
        return problem.stage().isPresent() ? Place.stage(problem.stage().getAsInt()) : Place.AXIS;
    }
}
