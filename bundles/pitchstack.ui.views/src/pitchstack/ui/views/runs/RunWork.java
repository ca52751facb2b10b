// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.runs;

import java.util.List;
import java.util.Optional;
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
    private final List<RunPage> pages;
    private final PitchPane pitches;
    private final PageWork work;
    private boolean isFound;

    /**
     * @param page what the work is for
     * @param pages told what comes of it
     * @param pitches one of them, told what the pitches buy
     */
    RunWork(Control page, Busy busy, Runs runs, List<RunPage> pages, PitchPane pitches) {
        this.runs = runs;
        this.pages = pages;
        this.pitches = pitches;
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
        if (isFound) {
            pitches.noGain("Stopped before the targets were planned. Change a reading to begin again.");
        } else {
            say("Stopped before it was worked out. Change a reading to begin again.");
        }
    }

    private void ask() {
        Optional<RunStudy.Question> question = runs.session() == null || runs.session().analysis().hasErrors()
                ? Optional.empty() : runs.question();
        if (question.isEmpty()) {
            work.forget();
            say(NO_RUN);
            return;
        }
        isFound = false;
        work.begin("What a run tells", question.get()::answer,
                "What this run tells could not be worked out; what went wrong is in the program's log.", this::say,
                study -> found(question.get(), study));
    }

    /** What was found is shown at once; what it buys on the targets takes longer. */
    private void found(RunStudy.Question question, RunStudy study) {
        isFound = true;
        pages.forEach(page -> page.found(study));
        if (study.fit().fit().isPresent() && !runs.axis().getTargets().isEmpty()) {
            boolean withTeeth = pitches.withIndexErrors();
            work.begin("What corrected pitches buy", progress -> question.gain(study.fit(), withTeeth, progress),
                    "What these pitches buy could not be worked out; what went wrong is in the program's log.",
                    pitches::noGain, pitches::bought);
        }
    }

    private void say(String sentence) {
        pages.forEach(page -> page.say(sentence));
    }
}
