// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.wear;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.analysis.TargetStops;
import pitchstack.core.coverage.Outcome;
import pitchstack.core.coverage.Visits;
import pitchstack.core.plan.Progress;
import pitchstack.core.plan.SequenceAnswer;
import pitchstack.core.plan.SequenceRequest;
import pitchstack.core.plan.Sequences;
import pitchstack.core.plan.StopOrder;
import pitchstack.core.plan.WornPolicy;
import pitchstack.core.stack.AxisSpec;
import pitchstack.edit.Session;
import pitchstack.ui.views.PageWork;

/** Keeps the forecast of seatings true to one sound axis and what is to be counted on it. */
final class SeatingsWork {
    private static final int PAUSE_MS = 250;

    private final SeatingsPane pane;
    private final PageWork work;
    private Session session;
    private Object asked;

    /** All that the forecast rests on, to tell whether it must be made anew. */
    private record Wanted(AxisSpec axis, SequenceRequest request) { }

    SeatingsWork(Composite parent) {
        pane = new SeatingsPane(parent, this::later, this::stop);
        work = new PageWork(control(), pane.busy(), this::ask);
    }

    Control control() {
        return pane.control();
    }

    void setFocus() {
        pane.form().setFocus();
    }

    /** Shows the forecast of the axis that a session looks at. */
    void show(Session shown) {
        session = shown;
        later();
    }

    private void later() {
        if (session != null) {
            work.askAfter(PAUSE_MS);
        }
    }

    /** Ends working until something is shown again. */
    void rest() {
        work.rest();
        asked = null;
    }

    private void stop() {
        rest();
        pane.say("Stopped before it was planned. Choose what to count to begin again.");
    }

    private void ask() {
        if (control().isDisposed() || session.analysis().hasErrors()) {
            return;
        }
        pane.form().order().order().ifPresentOrElse(this::plan, this::read);
    }

    private void read() {
        rest();
        AxisAnalysis analysis = session.analysis();
        TypedSettings typed = TypedSettings.read(pane.form().typed(), analysis.spec());
        pane.problem(typed.bad().isEmpty() ? "" : typed.bad().get(0)
                + (typed.bad().size() == 1 ? "" : " " + (typed.bad().size() - 1) + " more lines cannot be read."));
        if (typed.settings().isEmpty()) {
            pane.say("Type settings above, one a line: an index for each stage, lowest stage first.");
        } else {
            pane.show(Load.of(analysis.spec(), analysis.current(), typed.settings(), 0));
        }
    }

    private void plan(StopOrder order) {
        AxisAnalysis analysis = session.analysis();
        TargetStops targets = TargetStops.of(analysis);
        pane.problem(targets.unread().isEmpty() ? "" : targets.unread().get(0));
        if (targets.stops().isEmpty()) {
            rest();
            pane.say("The file has no targets to count seatings by. Save some in the view Target, or count settings that you"
                    + " type.");
            return;
        }
        SequenceRequest request = new SequenceRequest(targets.stops(), analysis.current(), analysis.last(), WornPolicy.AVOID,
                order, SequenceRequest.DEFAULT_MEMORY);
        Wanted wanted = new Wanted(analysis.spec(), request);
        if (!wanted.equals(asked)) {
            asked = wanted;
            int unread = targets.unread().size();
            work.begin("Seatings", progress -> load(analysis, request, unread, progress),
                    "The list could not be planned; what went wrong is in the program's log.", pane::say, pane::show);
        }
    }

    private static Outcome<Load> load(AxisAnalysis analysis, SequenceRequest request, int unread, Progress progress) {
        SequenceAnswer answer = Sequences.plan(analysis.planner().orElseThrow(), request, progress);
        if (answer instanceof SequenceAnswer.Planned planned) {
            return new Outcome.Done<>(Load.of(analysis.spec(), request.from(), Visits.of(planned, request.order(), request.from()),
                    planned.leftOut() + unread));
        }
        return answer instanceof SequenceAnswer.Refused refused ? new Outcome.Refused<>(refused.sentence())
                : new Outcome.Cancelled<>();
    }
}
