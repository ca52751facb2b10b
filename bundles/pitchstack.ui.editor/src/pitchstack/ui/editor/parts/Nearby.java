// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import java.util.function.Consumer;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.stack.Setting;
import pitchstack.ui.editor.places.Dots;
import pitchstack.ui.editor.places.Extent;
import pitchstack.ui.editor.places.ReachWalk;

/**
 * Finds the positions in sight that the axis can reach, away from the window's thread. While it works, or where it is
 * asked again, what was found before stands.
 */
final class Nearby {
    private static final int PAUSE_MS = 120;
    /** Longer than this nobody waits for marks; on the largest axes those farthest from the carriage are left out. */
    private static final long MOST_NS = 2_000_000_000;

    private final Display display;
    private final Consumer<Dots> found;
    private Search search;

    /** @param found told of what was found, on the display's thread */
    Nearby(Display display, Consumer<Dots> found) {
        this.display = display;
        this.found = found;
    }

    /**
     * What to look for.
     *
     * @param at where the stages stand
     * @param window what is seen, as offsets from there
     * @param apart the least distance of two marks
     */
    record Question(AxisAnalysis analysis, Setting at, Extent window, long apart) { }

    /** Asks, unless the same was asked last. */
    void ask(Question question) {
        if (search != null && search.question.equals(question)) {
            return;
        }
        forget();
        if (!question.analysis().hasErrors()) {
            search = new Search(question);
            search.setSystem(true);
            search.schedule(PAUSE_MS);
        } else {
            found.accept(Dots.NONE);
        }
    }

    /** Ends whatever is under way. */
    void forget() {
        if (search != null) {
            search.cancel();
            search = null;
        }
    }

    private final class Search extends Job {
        private final Question question;

        Search(Question question) {
            super("Positions beside the carriage");
            this.question = question;
        }

        @Override
        protected IStatus run(IProgressMonitor monitor) {
            long end = System.nanoTime() + MOST_NS;
            Dots dots = new ReachWalk(question.analysis().planner().orElseThrow(), question.at(), question.apart(),
                    () -> monitor.isCanceled() || System.nanoTime() > end).within(question.window());
            if (monitor.isCanceled()) {
                return Status.CANCEL_STATUS;
            }
            if (!display.isDisposed()) {
                display.asyncExec(() -> {
                    if (search == this) {
                        found.accept(dots);
                    }
                });
            }
            return Status.OK_STATUS;
        }
    }
}
