// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.DoubleConsumer;
import java.util.function.Function;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.jobs.IJobChangeEvent;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.core.runtime.jobs.JobChangeAdapter;
import org.eclipse.swt.widgets.Display;
import pitchstack.core.plan.Progress;

/** Works away from the user interface thread. Only the latest work counts; older work is cancelled. */
public final class Background {
    /** What comes sooner needs no word of waiting. */
    private static final int PATIENCE_MS = 500;
    private static final int TELL_EVERY_MS = 200;

    private final Display display;
    private final DoubleConsumer waiting;
    private Job latest;
    /** The number of the latest work; read by jobs. */
    private volatile long asked;
    /** How far the latest work is; written by its job. */
    private volatile double share;

    /**
     * @param display the user interface
     * @param waiting called on its thread again and again while work takes long, with the share that is done, from 0 to 1
     */
    public Background(Display display, DoubleConsumer waiting) {
        this.display = display;
        this.waiting = waiting;
    }

    /**
     * Begins, and forgets what was begun before.
     *
     * @param <T> what the work gives
     * @param name what the work is called where jobs are listed
     * @param work what to do; it is told of a cancellation through the progress
     * @param then called on the user interface thread with what came of it, or with nothing if the work failed, which is
     *     then in the log; not called if it was forgotten by then
     */
    public <T> void ask(String name, Function<Progress, T> work, Consumer<Optional<T>> then) {
        forget();
        long mine = asked + 1;
        asked = mine;
        share = 0;
        AtomicReference<T> result = new AtomicReference<>();
        Job job = Job.createSystem(name, (ICoreRunnable) monitor -> result.set(work.apply(watched(monitor, mine))));
        job.addJobChangeListener(new JobChangeAdapter() {
            @Override
            public void done(IJobChangeEvent event) {
                if (!display.isDisposed()) {
                    display.asyncExec(() -> ended(job, Optional.ofNullable(result.get()), then));
                }
            }
        });
        job.setPriority(Job.SHORT);
        latest = job;
        job.schedule();
        display.timerExec(PATIENCE_MS, () -> tell(mine));
    }

    private void tell(long work) {
        if (latest != null && work == asked) {
            waiting.accept(share);
            display.timerExec(TELL_EVERY_MS, () -> tell(work));
        }
    }

    /** Forgets what was begun: nothing will be given. */
    public void forget() {
        if (latest != null) {
            latest.cancel();
            latest = null;
        }
    }

    /** Whether something is being worked on. */
    public boolean isBusy() {
        return latest != null;
    }

    private <T> void ended(Job job, Optional<T> result, Consumer<Optional<T>> then) {
        if (job == latest) {
            latest = null;
            then.accept(result);
        }
    }

    private Progress watched(IProgressMonitor monitor, long work) {
        return new Progress() {
            @Override
            public boolean isCancelled() {
                return monitor.isCanceled();
            }

            @Override
            public void done(long part, long of) {
                if (work == asked) {
                    share = of <= 0 ? 0 : (double) part / of;
                }
            }
        };
    }
}
