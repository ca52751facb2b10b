// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.list;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.WeakHashMap;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.plan.SequenceAnswer;
import pitchstack.core.plan.SequenceRequest;
import pitchstack.core.plan.Sequences;
import pitchstack.core.plan.StopOrder;
import pitchstack.core.stack.Setting;
import pitchstack.edit.ApplySetting;
import pitchstack.edit.Session;
import pitchstack.model.Axis;
import pitchstack.model.Target;
import pitchstack.ui.views.Background;

/** Keeps the answers of the list true to one sound axis: plans it anew, away from this thread, when anything changes. */
final class ListPlanning {
    private static final String EMPTY = "Type a position into the last row, paste a column from a spreadsheet, or import a CSV "
            + "file; how each target is reached is shown beside it.";

    private final ListPage page;
    private final Background work;
    private final Walk walk = new Walk();
    private final Map<Axis, ListForm.Choice> choices = new WeakHashMap<>();
    private Runnable told = () -> { };
    private Session session;
    private Listing listing = new Listing(List.of());
    private ListPlan plan;
    private boolean outdated;

    ListPlanning(Composite parent) {
        work = new Background(parent.getDisplay(), this::waiting);
        page = new ListPage(parent, this::stop);
        control().addListener(SWT.Dispose, e -> rest());
        page.form().onChoice(this::chosen);
        page.table().onSort(this::fill);
    }

    private Control control() {
        return page.control();
    }

    ListPage page() {
        return page;
    }

    /** @param listener called when the list or its answers have changed, or are out of date */
    void onChange(Runnable listener) {
        told = listener;
    }

    /** Shows the axis that a session looks at. */
    void show(Session shown) {
        session = shown;
        plan = null;
        page.say("");
        page.busy().hide();
        page.form().show(choices.getOrDefault(session.axis(), ListForm.Choice.USUAL));
        begin();
    }

    /** Takes up a change of the document. */
    void refresh() {
        walk.follow(session.analysis().current(), session.analysis().last());
        replan();
    }

    /** Plans from where the stages stand now. */
    void begin() {
        walk.begin(session.analysis().current(), session.analysis().last());
        replan();
    }

    private void chosen() {
        choices.put(session.axis(), page.form().choice());
        replan();
    }

    /** Ends planning until something is shown again. */
    void rest() {
        work.forget();
    }

    /** The session whose axis is shown. */
    Session session() {
        return session;
    }

    /** The list as it is now. */
    Listing listing() {
        return listing;
    }

    /** The plan of the list as it is now; empty while it is being made, and where there is none. */
    Optional<ListPlan> plan() {
        return Optional.ofNullable(outdated ? null : plan);
    }

    /**
     * Moves the stages to a setting for a target.
     *
     * @param target the target that the setting reaches
     * @param setting a setting of the plan
     */
    void apply(Target target, Setting setting) {
        walk.set(target, setting);
        if (setting.equals(session.analysis().current())) {
            fill();
        } else {
            session.run(new ApplySetting(session.axis(), setting));
        }
    }

    /** Stops planning, if it is being planned; tells whether it was. */
    boolean stop() {
        if (!work.isBusy()) {
            return false;
        }
        work.forget();
        page.busy().hide();
        page.say("Stopped: what is shown in grey is from before. Press F5 to plan the list again.");
        return true;
    }

    private void replan() {
        AxisAnalysis analysis = session.analysis();
        listing = Listing.of(session.axis(), analysis.spec());
        outdated = true;
        List<Listing.Entry> readable = listing.readable();
        if (readable.isEmpty()) {
            work.forget();
            nothing(listing.entries().isEmpty() ? EMPTY : "No target of this list can be read; correct them in the table.");
            return;
        }
        SequenceRequest request = request(analysis, readable);
        List<Target> targets = readable.stream().map(Listing.Entry::target).toList();
        if (plan != null && plan.answers(analysis.spec(), request, targets)) {
            work.forget();
            show(plan);
            return;
        }
        fill();
        work.ask("Plan the list", progress -> Sequences.plan(analysis.planner().orElseThrow(), request, progress),
                answer -> ended(analysis, request, targets, answer));
    }

    private SequenceRequest request(AxisAnalysis analysis, List<Listing.Entry> readable) {
        ListForm.Choice choice = page.form().choice();
        boolean each = choice.order() == StopOrder.EACH_FROM_START;
        return new SequenceRequest(readable.stream().map(entry -> entry.stop().orElseThrow()).toList(),
                each ? analysis.current() : walk.start(), each ? analysis.last() : walk.last(), choice.worn(), choice.order(),
                SequenceRequest.DEFAULT_MEMORY);
    }

    private void waiting(double share) {
        if (!control().isDisposed()) {
            page.busy().say(session.analysis().isPrepared() ? "Planning…" : "Preparing…");
            page.busy().show(share);
        }
    }

    private void ended(AxisAnalysis analysis, SequenceRequest request, List<Target> targets,
            Optional<SequenceAnswer> answer) {
        if (control().isDisposed()) {
            return;
        }
        if (answer.isEmpty()) {
            nothing("The planner failed on this list; what went wrong is in the program's log.");
        } else if (answer.get() instanceof SequenceAnswer.Refused refused) {
            nothing(refused.sentence());
        } else if (answer.get() instanceof SequenceAnswer.Planned made) {
            show(new ListPlan(analysis.spec(), request, targets, made));
        }
    }

    private void show(ListPlan made) {
        plan = made;
        outdated = false;
        page.busy().hide();
        page.say(new Figures(plan, listing.entries().size() - listing.readable().size()).sentences());
        fill();
    }

    private void nothing(String sentence) {
        plan = null;
        page.busy().hide();
        page.say(sentence);
        fill();
    }

    private void fill() {
        page.table().show(listing, plan, outdated, page.form().choice().order() == StopOrder.FREE, walk.done());
        told.run();
    }
}
