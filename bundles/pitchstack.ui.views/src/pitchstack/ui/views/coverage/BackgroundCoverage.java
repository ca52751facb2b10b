// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.coverage;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.jobs.IJobChangeEvent;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.core.runtime.jobs.JobChangeAdapter;
import org.eclipse.swt.widgets.Display;
import pitchstack.core.coverage.Coverage;
import pitchstack.core.coverage.Outcome;
import pitchstack.core.coverage.Reach;
import pitchstack.core.plan.Progress;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Wear;
import pitchstack.ui.views.coverage.strip.Shares;

/** Works out coverages away from the user interface thread. Only the latest is given; older work is cancelled. */
final class BackgroundCoverage {
    /** What comes sooner needs no word of waiting. */
    private static final int PATIENCE_MS = 500;

    private final Display display;
    private final Runnable waiting;
    private Job latest;
    private long asked;
    /** The axis prepared last, since only the tolerance may change. Written by jobs. */
    private volatile Reach prepared;

    /**
     * @param display the user interface
     * @param waiting called on its thread when the work takes long
     */
    BackgroundCoverage(Display display, Runnable waiting) {
        this.display = display;
        this.waiting = waiting;
    }

    /**
     * Begins, and forgets what was begun before.
     *
     * @param axis a sound axis
     * @param tolerance at least 0, in counts
     * @param then called on the user interface thread with what came of it, or with nothing if the work failed, which is
     *     then in the log; not called if something newer was begun by then
     */
    void ask(AxisSpec axis, long tolerance, Consumer<Optional<Outcome<Charted>>> then) {
        forget();
        AtomicReference<Outcome<Charted>> outcome = new AtomicReference<>();
        Job job = Job.createSystem("Coverage",
                (ICoreRunnable) monitor -> outcome.set(chart(axis, tolerance, watched(monitor))));
        job.addJobChangeListener(new JobChangeAdapter() {
            @Override
            public void done(IJobChangeEvent event) {
                if (!display.isDisposed()) {
                    display.asyncExec(() -> ended(job, Optional.ofNullable(outcome.get()), then));
                }
            }
        });
        job.setPriority(Job.SHORT);
        latest = job;
        long mine = ++asked;
        job.schedule();
        display.timerExec(PATIENCE_MS, () -> {
            if (latest != null && mine == asked) {
                waiting.run();
            }
        });
    }

    /** Forgets what was begun: nothing will be given. */
    void forget() {
        if (latest != null) {
            latest.cancel();
            latest = null;
        }
    }

    /** Whether something is being worked out. */
    boolean isBusy() {
        return latest != null;
    }

    private void ended(Job job, Optional<Outcome<Charted>> outcome, Consumer<Optional<Outcome<Charted>>> then) {
        if (job == latest) {
            latest = null;
            then.accept(outcome);
        }
    }

    private Outcome<Charted> chart(AxisSpec axis, long tolerance, Progress progress) {
        Reach known = prepared;
        if (known == null || !known.axis().equals(axis)) {
            Outcome<Reach> made = Reach.of(axis, progress);
            if (!(made instanceof Outcome.Done<Reach> done)) {
                return unfinished(made);
            }
            known = done.value();
            prepared = known;
        }
        Outcome<Coverage> covered = known.coverage(tolerance, progress);
        if (!(covered instanceof Outcome.Done<Coverage> done)) {
            return unfinished(covered);
        }
        var finest = known.finestStep(Wear.WORN, progress);
        return new Outcome.Done<>(new Charted(done.value(), new Shares(done.value().stretches()), done.value().summary(),
                finest instanceof Outcome.Done<?> ? finest.get() : Optional.empty()));
    }

    private static Outcome<Charted> unfinished(Outcome<?> outcome) {
        return outcome instanceof Outcome.Refused<?> refused ? new Outcome.Refused<>(refused.why())
                : new Outcome.Cancelled<>();
    }

    private static Progress watched(IProgressMonitor monitor) {
        return new Progress() {
            @Override
            public boolean isCancelled() {
                return monitor.isCanceled();
            }

            @Override
            public void done(long part, long of) {
                // Several pieces of work follow each other, so that a part of one says little.
            }
        };
    }
}
