// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.targets;

import java.util.Optional;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.plan.Answer;
import pitchstack.core.plan.PlannedSetting;
import pitchstack.core.units.Scale;
import pitchstack.edit.AddElement;
import pitchstack.edit.ApplySetting;
import pitchstack.edit.RemoveElement;
import pitchstack.edit.Session;
import pitchstack.model.Target;

/** The question, the saved targets and the answer for one sound axis, and the planning between them. */
final class TargetPage {
    /** A pause in typing after which it is planned. */
    private static final int PAUSE_MS = 250;
    /** Answers that come sooner need no word of waiting. */
    private static final int PATIENCE_MS = 500;
    private static final int MARGIN = 8;

    private final ScrolledComposite scroll;
    private final Composite content;
    private final Label heading;
    private final QuestionForm form;
    private final SavedTargets saved;
    private final AnswerPane answer;
    private final BackgroundPlanner background;
    private final Drafts drafts;
    private final Runnable plan = this::plan;
    private final Runnable wait = this::waiting;
    private Runnable picked = () -> { };
    private Session session;
    private boolean entered;

    TargetPage(Composite parent, Drafts drafts) {
        this.drafts = drafts;
        background = new BackgroundPlanner(parent.getDisplay());
        scroll = new ScrolledComposite(parent, SWT.V_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        content = new Composite(scroll, SWT.NONE);
        scroll.setContent(content);
        GridLayoutFactory.swtDefaults().margins(MARGIN, MARGIN).numColumns(QuestionForm.COLUMNS).applyTo(content);
        heading = new Label(content, SWT.WRAP);
        heading.setFont(new Fonts(heading).bold());
        GridDataFactory.fillDefaults().grab(true, false).span(QuestionForm.COLUMNS, 1).hint(60, SWT.DEFAULT).applyTo(heading);
        form = new QuestionForm(content);
        saved = new SavedTargets(content, QuestionForm.COLUMNS);
        answer = new AnswerPane(content, QuestionForm.COLUMNS, this::layout);
        scroll.addListener(SWT.Resize, e -> layout());
        scroll.addListener(SWT.Dispose, e -> background.forget());
        listen();
    }

    private void listen() {
        form.onTyped(this::typed);
        form.onEnter(this::enter);
        saved.onPick(this::pick);
        saved.onSave(this::save);
        saved.onDelete(target -> session.run(new RemoveElement(target)));
        answer.onApply(this::apply);
        onAnyKey(content);
    }

    /** Lets M1+Enter apply from wherever in the page the focus is. */
    private void onAnyKey(Composite parent) {
        for (Control child : parent.getChildren()) {
            child.addListener(SWT.KeyDown, this::key);
            if (child instanceof Composite inner) {
                onAnyKey(inner);
            }
        }
    }

    private void key(Event e) {
        if ((e.stateMask & SWT.MODIFIER_MASK) == SWT.MOD1 && (e.keyCode == SWT.CR || e.keyCode == SWT.KEYPAD_CR)) {
            e.doit = false;
            answer.applicable().ifPresent(this::apply);
        }
    }

    Control control() {
        return scroll;
    }

    void setFocus() {
        form.setFocus();
    }

    /** The saved target that is picked. */
    Optional<Target> picked() {
        return saved.selected();
    }

    /** @param listener called when a saved target is picked, or none is any more */
    void onPick(Runnable listener) {
        picked = listener;
    }

    /** Shows the axis that a session looks at, with what was last typed for it. */
    void show(Session shown) {
        session = shown;
        form.show(drafts.recall(session));
        saved.deselect();
        refresh();
    }

    /** Shows the axis as it is now, and plans again from where the stages stand now. */
    void refresh() {
        AxisAnalysis analysis = session.analysis();
        Scale scale = analysis.spec().scale();
        form.hint(Units.symbol(session.positioner(), scale), scale.formatSize(analysis.spec().tolerance()));
        saved.show(session.axis());
        moved();
    }

    /** Says where the stages stand now, and plans again from there. */
    void moved() {
        AxisAnalysis analysis = session.analysis();
        heading.setText("Axis “" + session.axis().getName().replace("&", "&&") + "” stands at "
                + analysis.spec().scale().format(analysis.spec().position(session.shown())));
        plan();
    }

    /** Ends planning until something is shown again. */
    void rest() {
        content.getDisplay().timerExec(-1, plan);
        background.forget();
    }

    /** Keeps what is typed, under the name that the document has now. */
    void keep() {
        drafts.keep(session, form.question());
    }

    private void typed() {
        entered = false;
        saved.deselect();
        picked.run();
        keep();
        answer.outdate();
        content.getDisplay().timerExec(PAUSE_MS, plan);
    }

    private void enter() {
        Optional<PlannedSetting> move = answer.applicable();
        if (entered && move.isPresent()) {
            apply(move.get());
        } else {
            entered = true;
            plan();
        }
    }

    private void pick(Target target) {
        form.show(new Question(text(target.getPosition()), text(target.getTolerance()), form.question().worn()));
        entered = false;
        picked.run();
        keep();
        plan();
    }

    private void plan() {
        Display display = content.getDisplay();
        display.timerExec(-1, plan);
        Question.Reading reading = form.question().read(session.analysis().spec(), session.shown());
        form.problem(reading);
        saved.setSavable(reading instanceof Question.Reading.Asked);
        if (reading instanceof Question.Reading.Asked asked) {
            answer.outdate();
            display.timerExec(PATIENCE_MS, wait);
            background.ask(session.analysis().planner().orElseThrow(), asked.request(), found -> answered(asked, found));
        } else {
            background.forget();
            answer.say(reading instanceof Question.Reading.Nothing ? Units.invitation(session.analysis().spec().scale()) : "");
        }
        layout();
    }

    private void waiting() {
        if (!content.isDisposed() && background.isBusy()) {
            answer.say("Planning…");
            layout();
        }
    }

    private void answered(Question.Reading.Asked asked, Optional<Answer> found) {
        if (content.isDisposed()) {
            return;
        }
        if (found.isPresent()) {
            answer.show(new Planned(session.analysis().spec(), asked.request(), found.get()));
        } else {
            answer.say("The planner failed on this target; what went wrong is in the program's log.");
        }
        layout();
    }

    private void apply(PlannedSetting move) {
        entered = false;
        session.run(new ApplySetting(session.axis(), move.setting()));
    }

    private void save() {
        new TargetNaming(session).ask(content.getShell(), form.question()).ifPresent(target -> {
            session.run(AddElement.target(session.axis(), target));
            saved.select(target);
        });
    }

    private void layout() {
        content.layout(true, true);
        scroll.setMinHeight(content.computeSize(scroll.getClientArea().width, SWT.DEFAULT).y);
    }

    private static String text(String text) {
        return text == null ? "" : text;
    }
}
