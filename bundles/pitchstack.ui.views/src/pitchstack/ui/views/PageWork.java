// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views;

import java.util.function.Consumer;
import java.util.function.Function;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import pitchstack.core.coverage.Outcome;
import pitchstack.core.plan.Progress;

/**
 * Work for a page, done away from the user interface thread: the page shows how far it is while it takes long, and, as long
 * as it exists, what came of it. Only the latest work counts.
 */
public final class PageWork {
    private final Control page;
    private final Busy busy;
    private final Runnable ask;
    private final Background background;

    /**
     * @param page what the work is for; when it is disposed the work ends
     * @param busy shows how far the work is
     * @param ask called when a pause is over, to find out what is to be worked out
     */
    public PageWork(Control page, Busy busy, Runnable ask) {
        this.page = page;
        this.busy = busy;
        this.ask = ask;
        this.background = new Background(page.getDisplay(), share -> {
            if (!page.isDisposed()) {
                busy.show(share);
            }
        });
        page.addListener(SWT.Dispose, e -> rest());
    }

    /** Asks after a pause, which begins anew each time, so that a run of changes is one piece of work. */
    public void askAfter(int pauseMs) {
        page.getDisplay().timerExec(pauseMs, ask);
    }

    /** Ends the pause without asking. */
    public void askNoMore() {
        page.getDisplay().timerExec(-1, ask);
    }

    /**
     * Begins work, and forgets what was begun before.
     *
     * @param <T> what the work gives
     * @param name what the work is called where jobs are listed
     * @param work what to do
     * @param failure what is said if the work fails
     * @param say says why there is nothing to show
     * @param show shows what the work gave
     */
    public <T> void begin(String name, Function<Progress, Outcome<T>> work, String failure, Consumer<String> say,
            Consumer<T> show) {
        background.ask(name, work, outcome -> {
            if (page.isDisposed()) {
                return;
            }
            busy.hide();
            if (outcome.isEmpty()) {
                say.accept(failure);
            } else if (outcome.get() instanceof Outcome.Refused<T> refused) {
                say.accept(refused.why());
            } else if (outcome.get() instanceof Outcome.Done<T> done) {
                show.accept(done.value());
            }
        });
    }

    /** Whether something is being worked on. */
    public boolean isBusy() {
        return background.isBusy();
    }

    /** Forgets the work: nothing will come of it. */
    public void forget() {
        background.forget();
        busy.hide();
    }

    /** Ends work and pause. */
    public void rest() {
        askNoMore();
        forget();
    }
}
