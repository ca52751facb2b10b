// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.runs;

import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.eclipse.swt.widgets.Control;
import pitchstack.analysis.accuracy.RunStudy;
import pitchstack.ui.views.Busy;
import pitchstack.ui.views.PageWork;

/** Keeps what a run tells true, worked out in the background after each change. */
final class RunWork {
    /** A pause after which it is worked out, so that a run of edits is one piece of work. */
    private static final int PAUSE_MS = 150;
    private static final String NO_RUN = "No run of measurements is in this file yet. New Run begins one.";

    private final Runs runs;
    private final BooleanSupplier withIndexErrors;
    private final List<RunPage> pages;
    private final PageWork work;

    /**
     * @param page what the work is for
     * @param withIndexErrors whether what a fit buys counts errors of single indices
     * @param pages told what comes of it
     */
    RunWork(Control page, Busy busy, Runs runs, BooleanSupplier withIndexErrors, List<RunPage> pages) {
        this.runs = runs;
        this.withIndexErrors = withIndexErrors;
        this.pages = pages;
        work = new PageWork(page, busy, this::ask);
    }

    /** Works it out after a pause. */
    void later() {
        work.askAfter(PAUSE_MS);
    }

    void rest() {
        work.rest();
    }

    void stop() {
        work.forget();
        say("Stopped before it was worked out. Change a reading to begin again.");
    }

    private void ask() {
        Optional<RunStudy.Question> question = runs.session() == null || runs.session().analysis().hasErrors()
                ? Optional.empty() : runs.question(withIndexErrors.getAsBoolean());
        if (question.isEmpty()) {
            work.forget();
            say(NO_RUN);
            return;
        }
        work.begin("What a run tells", question.get()::answer,
                "What this run tells could not be worked out; what went wrong is in the program's log.", this::say,
                study -> pages.forEach(page -> page.found(study)));
    }

    private void say(String sentence) {
        pages.forEach(page -> page.say(sentence));
    }
}
