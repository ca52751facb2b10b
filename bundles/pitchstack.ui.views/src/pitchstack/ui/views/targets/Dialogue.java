// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.targets;

import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.plan.Answer;
import pitchstack.core.plan.PlannedSetting;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.units.Scale;
import pitchstack.edit.AddElement;
import pitchstack.edit.ApplySetting;
import pitchstack.edit.RemoveElement;
import pitchstack.edit.Session;
import pitchstack.model.Target;
import pitchstack.ui.views.Background;

/** Question and answer on one sound axis: plans what is typed or picked, and applies what is chosen. */
final class Dialogue {
    /** A pause in typing after which it is planned. */
    private static final int PAUSE_MS = 250;

    private final TargetPage page;
    private final Drafts drafts;
    private final Runnable picked;
    private final Background background;
    private final Runnable plan = this::plan;
    private Session session;
    /** What was last read and answered; {@code null} once another question is asked. */
    private Question.Reading read;
    private boolean entered;
    private int alternatives = Question.ALTERNATIVES;

    /**
     * @param page what it is shown on
     * @param drafts what was typed before
     * @param picked called when a saved target is picked, or none is any more
     */
    Dialogue(TargetPage page, Drafts drafts, Runnable picked) {
        this.page = page;
        this.drafts = drafts;
        this.picked = picked;
        background = new Background(control().getDisplay(), share -> waiting());
        control().addListener(SWT.Dispose, e -> rest());
        page.form().onTyped(this::typed);
        page.form().onEnter(this::enter);
        page.saved().onPick(this::pick);
        page.saved().onEnter(this::enter);
        page.saved().onSave(this::save);
        page.saved().onDelete(target -> session.run(new RemoveElement(target)));
        page.answer().onApply(this::apply);
        page.answer().onEnter(this::enter);
        page.answer().onShown(move -> {
            if (session != null && !session.isPlaying()) {
                session.propose(move);
            }
        });
        page.answer().onMore(() -> {
            alternatives += Question.MORE;
            plan();
        });
        page.onApplyKey(() -> page.answer().applicable().ifPresent(this::apply));
    }

    private Control control() {
        return page.control();
    }

    /** Shows the axis that a session looks at, with what was last typed for it. */
    void show(Session shown) {
        session = shown;
        entered = false;
        read = null;
        page.form().show(drafts.recall(session));
        page.saved().deselect();
        refresh();
    }

    /** Shows the axis as it is now, and plans again from where the stages stand now. */
    void refresh() {
        AxisAnalysis analysis = session.analysis();
        Scale scale = analysis.spec().scale();
        page.form().hint(Sayings.unit(session.positioner(), scale), scale.formatSize(analysis.spec().tolerance()));
        page.saved().show(session.axis());
        head();
        if (!session.isPlaying()) {
            plan();
        }
    }

    /**
     * Says where the stages stand now, and plans again from there; not where they stand as they did for the answer that is
     * shown, as they do after a move was played.
     */
    void moved() {
        head();
        if (!session.isPlaying()) {
            plan(true);
        }
    }

    private void head() {
        page.head(Sayings.standing(session.analysis().spec(), session.shown()));
    }

    /** Ends planning until something is shown again. */
    void rest() {
        control().getDisplay().timerExec(-1, plan);
        background.forget();
    }

    /** Keeps what is typed, under the name that the document has now. */
    void keep() {
        drafts.keep(session, page.form().question());
    }

    private void typed() {
        entered = false;
        read = null;
        alternatives = Question.ALTERNATIVES;
        page.saved().deselect();
        picked.run();
        keep();
        page.answer().outdate();
        control().getDisplay().timerExec(PAUSE_MS, plan);
    }

    /** Plans at once; the second time in a row, applies. */
    private void enter() {
        Optional<PlannedSetting> move = page.answer().applicable();
        if (entered && move.isPresent()) {
            apply(move.get());
        } else {
            entered = true;
            plan();
        }
    }

    /** Enter on a picked target picks it again on some systems, which must not count as another question. */
    private void pick(Target target) {
        Question question = question(text(target.getPosition()), text(target.getTolerance()));
        if (question.equals(page.form().question())) {
            picked.run();
            return;
        }
        show(question);
    }

    /** Plans what was asked elsewhere. */
    void ask(String target, String tolerance) {
        page.saved().deselect();
        show(question(target, tolerance));
    }

    private Question question(String target, String tolerance) {
        return new Question(target, false, tolerance, page.form().question().worn());
    }

    private void show(Question question) {
        alternatives = Question.ALTERNATIVES;
        page.form().show(question);
        entered = false;
        picked.run();
        keep();
        plan();
    }

    private void plan() {
        plan(false);
    }

    /** @param keep whether what is shown is kept where it is the answer to what is asked */
    private void plan(boolean keep) {
        control().getDisplay().timerExec(-1, plan);
        AxisAnalysis analysis = session.analysis();
        Question question = page.form().question();
        Question.Reading reading = question.read(analysis.spec(), session.shown(), analysis.last(), alternatives);
        boolean same = reading.equals(read);
        read = reading;
        if (keep && same && !(reading instanceof Question.Reading.Asked)) {
            return;
        }
        page.form().problem(reading);
        page.form().explain(meaning(question, reading));
        page.saved().setSavable(reading instanceof Question.Reading.Asked && !question.relative());
        if (reading instanceof Question.Reading.Asked asked) {
            ask(analysis, asked, keep);
            page.layout();
        } else {
            background.forget();
            AxisSpec axis = analysis.spec();
            say(!(reading instanceof Question.Reading.Nothing) ? ""
                    : question.relative() ? Sayings.distanceInvitation(axis.scale()) : Sayings.invitation(axis));
        }
    }

    private void ask(AxisAnalysis analysis, Question.Reading.Asked asked, boolean keep) {
        if (keep && page.answer().confirm(analysis.spec(), asked.request())) {
            background.forget();
            return;
        }
        page.answer().outdate();
        background.ask("Plan", progress -> analysis.planner().orElseThrow().plan(asked.request()),
                found -> answered(analysis, asked, found));
    }

    /** A distance is read back as the position it leads to. */
    private String meaning(Question question, Question.Reading reading) {
        AxisSpec axis = session.analysis().spec();
        return question.relative() && reading instanceof Question.Reading.Asked asked
                ? Sayings.distance(axis.scale(), axis.position(session.shown()), asked.request().target()) : "";
    }

    private void answered(AxisAnalysis analysis, Question.Reading.Asked asked, Optional<Answer> found) {
        if (control().isDisposed()) {
            return;
        }
        if (found.isEmpty()) {
            say("The planner failed on this target; what went wrong is in the program's log.");
            return;
        }
        page.answer().show(new Planned(analysis.spec(), asked.request(), found.get()));
        page.layout();
    }

    private void waiting() {
        if (!control().isDisposed()) {
            AxisAnalysis analysis = session.analysis();
            page.answer().await(analysis.spec(),
                    analysis.isPrepared() ? "Planning…" : "Preparing to plan on this axis…");
            page.layout();
        }
    }

    private void say(String sentence) {
        if (!control().isDisposed()) {
            page.answer().say(sentence);
            page.layout();
        }
    }

    private void apply(PlannedSetting move) {
        entered = false;
        session.run(new ApplySetting(session.axis(), move.setting()));
        page.form().readyForNext();
    }

    private void save() {
        new TargetNaming(session).ask(control().getShell(), page.form().question()).ifPresent(target -> {
            session.run(AddElement.target(session.axis(), target));
            page.saved().select(target);
            picked.run();
        });
    }

    private static String text(String text) {
        return text == null ? "" : text;
    }
}
