// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.runs;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import pitchstack.analysis.accuracy.RunStudy;
import pitchstack.core.units.Scale;
import pitchstack.edit.AddElement;
import pitchstack.edit.NewStack;
import pitchstack.edit.RemoveElement;
import pitchstack.edit.Session;
import pitchstack.model.Axis;
import pitchstack.model.MeasurementRun;

/** The runs of the axis that is looked at, and which of them is shown. */
final class Runs {
    private final Runnable changed;
    private Session session;
    private MeasurementRun run;

    /** @param changed called when another run shall be shown */
    Runs(Runnable changed) {
        this.changed = changed;
    }

    /** Follows a document; the run that was shown stays if it is still there. */
    void follow(Session of) {
        session = of;
        if (run == null || !all().contains(run)) {
            run = all().isEmpty() ? null : all().get(all().size() - 1);
        }
    }

    Session session() {
        return session;
    }

    Axis axis() {
        return session.axis();
    }

    Scale scale() {
        return session.analysis().spec().scale();
    }

    /** All runs of the axis, in the order of the file. */
    List<MeasurementRun> all() {
        return axis().getRuns();
    }

    /** The one that is shown. */
    Optional<MeasurementRun> run() {
        return Optional.ofNullable(run);
    }

    /** Shows another. */
    void choose(int number) {
        run = all().get(number);
        changed.run();
    }

    /** Begins a run. */
    void add() {
        MeasurementRun begun = NewStack.run(axis(), LocalDate.now());
        run = begun;
        session.run(AddElement.run(axis(), begun));
    }

    /** The run that is shown, begun if there is none. */
    MeasurementRun begun() {
        if (run == null) {
            add();
        }
        return run;
    }

    /** Deletes the one that is shown. */
    void delete() {
        if (run != null) {
            session.run(new RemoveElement(run));
        }
    }

    /** What to ask about it; empty while there is no run, or while it is gone from the file and not yet from the view. */
    Optional<RunStudy.Question> question() {
        return run().filter(all()::contains).map(one -> RunStudy.Question.of(session.positioner(), axis(), all().indexOf(one)));
    }
}
