// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.targets;

import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.widgets.Display;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.plan.Answer;
import pitchstack.core.plan.PlanRequest;
import pitchstack.ui.views.Background;

/** Asks planners away from the user interface thread, and prepares them there. Only the latest question is answered. */
public final class BackgroundPlanner {
    private final Background work;

    /**
     * @param display the user interface
     * @param waiting called on its thread when an answer takes long
     */
    public BackgroundPlanner(Display display, Runnable waiting) {
        work = new Background(display, share -> waiting.run());
    }

    /**
     * Asks, and forgets what was asked before.
     *
     * @param analysis a sound axis
     * @param request what to ask
     * @param then called on the user interface thread with the answer, or with none if the planner failed, which is then
     *     in the log; not called if something newer was asked by then
     */
    public void ask(AxisAnalysis analysis, PlanRequest request, Consumer<Optional<Answer>> then) {
        work.ask("Plan", progress -> analysis.planner().orElseThrow().plan(request), then);
    }

    /** Forgets what was asked: no answer will be given. */
    public void forget() {
        work.forget();
    }
}
