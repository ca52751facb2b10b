// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Function;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.IJobChangeEvent;
import org.eclipse.core.runtime.jobs.ISchedulingRule;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.core.runtime.jobs.JobChangeAdapter;
import org.eclipse.swt.widgets.Display;
import pitchstack.core.plan.Progress;

/**
 * Work away from the user interface thread of which only the latest is wanted: what was begun before is cancelled.
 *
 * @param <T> what comes of it
 */
public final class LatestWork<T> {
    /** What comes sooner needs no word of waiting. */
    private static final int PATIENCE_MS = 500;

    private final Display display;
    private final String name;
    private final Runnable waiting;
    private final ISchedulingRule oneAtATime = new OneAtATime();
    private Job latest;
    private volatile WatchedProgress progress = new WatchedProgress();

    /**
     * @param display the user interface
     * @param name what the work is called where the program lists its threads
     * @param waiting called on the user interface thread when the work takes long
     */
    public LatestWork(Display display, String name, Runnable waiting) {
        this.display = display;
        this.name = name;
        this.waiting = waiting;
    }

    /**
     * Begins, and forgets what was begun before.
     *
     * @param work what to do; it ends early, with whatever result, when its progress says so
     * @param then called on the user interface thread with what came of it, or with nothing if the work failed, which is
     *     then in the log; not called if something newer was begun by then, or it was forgotten
     */
    public void begin(Function<Progress, T> work, Consumer<Optional<T>> then) {
        forget();
        AtomicReference<T> result = new AtomicReference<>();
        WatchedProgress watched = new WatchedProgress();
        progress = watched;
        Job job = Job.createSystem(name, (ICoreRunnable) monitor -> result.set(work.apply(watched)));
        job.addJobChangeListener(new JobChangeAdapter() {
            @Override
            public void done(IJobChangeEvent event) {
                if (!display.isDisposed()) {
                    display.asyncExec(() -> ended(job, Optional.ofNullable(result.get()), then));
                }
            }
        });
        job.setRule(oneAtATime);
        job.setPriority(Job.INTERACTIVE);
        latest = job;
        job.schedule();
        display.timerExec(PATIENCE_MS, () -> {
            if (job == latest) {
                waiting.run();
            }
        });
    }

    /** Forgets what was begun: nothing will be given. */
    public void forget() {
        if (latest != null) {
            progress.cancelled = true;
            latest.cancel();
            latest = null;
        }
    }

    /** Whether something is being worked on. */
    public boolean isBusy() {
        return latest != null;
    }

    /** How far the latest work is, as it last told: from 0 to 1. */
    public double part() {
        return progress.part;
    }

    private void ended(Job job, Optional<T> result, Consumer<Optional<T>> then) {
        if (job == latest) {
            latest = null;
            then.accept(result);
        }
    }

    private static final class WatchedProgress implements Progress {
        private volatile boolean cancelled;
        private volatile double part;

        @Override
        public boolean isCancelled() {
            return cancelled;
        }

        @Override
        public void done(long done, long of) {
            part = of <= 0 ? 0 : Math.max(0, Math.min(1, (double) done / of));
        }
    }

    /** A second piece of work would only slow the first, and the first is wanted no more. */
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
