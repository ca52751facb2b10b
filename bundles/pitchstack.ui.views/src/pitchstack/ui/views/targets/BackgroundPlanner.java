// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.targets;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.IJobChangeEvent;
import org.eclipse.core.runtime.jobs.ISchedulingRule;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.core.runtime.jobs.JobChangeAdapter;
import org.eclipse.swt.widgets.Display;
import pitchstack.core.plan.Answer;
import pitchstack.core.plan.PlanRequest;
import pitchstack.core.plan.Planner;

/** Asks planners away from the user interface thread. Only the latest question is answered. */
public final class BackgroundPlanner {
    /** Answers that come sooner need no word of waiting. */
    private static final int PATIENCE_MS = 500;

    private final Display display;
    private final Runnable waiting;
    private final ISchedulingRule oneAtATime = new OneAtATime();
    private Job latest;

    /**
     * @param display the user interface
     * @param waiting called on its thread when an answer takes long
     */
    public BackgroundPlanner(Display display, Runnable waiting) {
        this.display = display;
        this.waiting = () -> {
            if (latest != null) {
                waiting.run();
            }
        };
    }

    /**
     * Asks, and forgets what was asked before.
     *
     * @param planner whom to ask
     * @param request what to ask
     * @param then called on the user interface thread with the answer, or with none if the planner failed, which is then
     *     in the log; not called if something newer was asked by then
     */
    public void ask(Planner planner, PlanRequest request, Consumer<Optional<Answer>> then) {
        forget();
        AtomicReference<Answer> answer = new AtomicReference<>();
        Job job = Job.createSystem("Plan", (ICoreRunnable) monitor -> answer.set(planner.plan(request)));
        job.addJobChangeListener(new JobChangeAdapter() {
            @Override
            public void done(IJobChangeEvent event) {
                if (!display.isDisposed()) {
                    display.asyncExec(() -> answered(job, Optional.ofNullable(answer.get()), then));
                }
            }
        });
        job.setRule(oneAtATime);
        job.setPriority(Job.INTERACTIVE);
        latest = job;
        job.schedule();
        display.timerExec(PATIENCE_MS, waiting);
    }

    /** Forgets what was asked: no answer will be given. */
    public void forget() {
        if (latest != null) {
            latest.cancel();
            latest = null;
        }
    }

    private void answered(Job job, Optional<Answer> answer, Consumer<Optional<Answer>> then) {
        if (job == latest) {
            latest = null;
            then.accept(answer);
        }
    }

    /** A second search would only slow the first, and the first is wanted no more. */
    private static final class OneAtATime implements ISchedulingRule {
        @Override
        public boolean contains(ISchedulingRule rule) {
            return rule == this;
        }

        @Override
        public boolean isConflicting(ISchedulingRule rule) {
            return rule == this;
        }
    }
}
