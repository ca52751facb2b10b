// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.targets;

import java.util.ArrayList;
import java.util.List;
import pitchstack.core.plan.Answer;
import pitchstack.core.plan.PlanRequest;
import pitchstack.core.plan.PlannedSetting;
import pitchstack.core.plan.Wording;
import pitchstack.core.stack.AxisSpec;

/**
 * An answer with what was asked.
 *
 * @param axis the axis it was planned on
 * @param request what was asked
 * @param answer what the planner found
 */
public record Planned(AxisSpec axis, PlanRequest request, Answer answer) {
    private static final char NO_BREAK_SPACE = '\u00A0';

    /** Puts the answer into sentences. */
    Wording wording() {
        return new Wording(axis);
    }

    /** The settings that reach the target, the best first; none where it is out of reach. */
    List<PlannedSetting> choices() {
        List<PlannedSetting> choices = new ArrayList<>();
        if (answer instanceof Answer.Reached reached) {
            choices.add(reached.best());
            choices.addAll(reached.alternatives());
        }
        return choices;
    }

    /**
     * The steps to a setting as numbered lines; none where the stages stand there already. The counts before and after
     * are kept on one line where a narrow view breaks it.
     */
    List<String> steps(PlannedSetting planned) {
        List<String> sentences = wording().steps(planned);
        List<String> numbered = new ArrayList<>(sentences.size());
        for (String sentence : sentences) {
            int counts = sentence.lastIndexOf(", ") + 2;
            numbered.add((numbered.size() + 1) + ". " + sentence.substring(0, counts)
                    + sentence.substring(counts).replace(' ', NO_BREAK_SPACE));
        }
        return numbered;
    }
}
