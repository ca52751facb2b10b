// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import pitchstack.core.plan.Planner;
import pitchstack.core.plan.Progress;
import pitchstack.core.plan.SequenceAnswer;
import pitchstack.core.plan.SequenceAnswer.Planned;
import pitchstack.core.plan.SequenceRequest;
import pitchstack.core.plan.Sequences;

/** Plans lists for the commands, which know a plan, a refusal and a stop from the keyboard. */
final class Listed {
    private Listed() {
    }

    /**
     * Plans a list.
     *
     * @throws BadInputException if it would take more than the numbers or the memory allow
     * @throws StoppedException if it was stopped
     */
    static Planned plan(Planner planner, SequenceRequest request, Progress progress)
            throws BadInputException, StoppedException {
        SequenceAnswer answer = Sequences.plan(planner, request, progress);
        if (answer instanceof SequenceAnswer.Refused refused) {
            throw new BadInputException(refused.sentence());
        }
        if (answer instanceof SequenceAnswer.Cancelled) {
            throw new StoppedException();
        }
        return (Planned) answer;
    }
}
