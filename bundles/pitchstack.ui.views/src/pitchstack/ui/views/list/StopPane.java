// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.list;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import pitchstack.core.plan.Answer;
import pitchstack.core.plan.Leg;
import pitchstack.core.plan.PlanRequest;
import pitchstack.core.plan.PlannedSetting;
import pitchstack.core.plan.Stop;
import pitchstack.core.stack.Setting;
import pitchstack.model.Target;
import pitchstack.ui.views.targets.AnswerPane;
import pitchstack.ui.views.targets.Planned;

/** The pane below the table: the steps to the selected target, and the buttons that make them. */
final class StopPane {
    private static final int MARGIN = 6;
    private static final int NARROW = 60;
    private static final int COLUMNS = 2;

    private final ScrolledComposite scroll;
    private final Composite content;
    private final Label heading;
    private final AnswerPane answer;
    private final Button next;

    StopPane(Composite parent) {
        scroll = new ScrolledComposite(parent, SWT.V_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        content = new Composite(scroll, SWT.NONE);
        scroll.setContent(content);
        GridLayoutFactory.swtDefaults().margins(MARGIN, MARGIN / 2).numColumns(COLUMNS).applyTo(content);
        heading = new Label(content, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(NARROW, SWT.DEFAULT).applyTo(heading);
        next = new Button(content, SWT.PUSH);
        next.setText("Apply and next");
        next.setToolTipText("Move the stages there and go on to the next target that is moved to (Ctrl+Shift+Enter)");
        GridDataFactory.fillDefaults().align(SWT.END, SWT.BEGINNING).applyTo(next);
        next.setEnabled(false);
        answer = new AnswerPane(content, COLUMNS, this::layout);
        scroll.addListener(SWT.Resize, e -> layout());
    }

    Control control() {
        return scroll;
    }

    /** @param listener called with the setting to move to */
    void onApply(Consumer<PlannedSetting> listener) {
        answer.onApply(listener);
    }

    /** @param listener called when the target shall be set and the next one chosen */
    void onNext(Runnable listener) {
        next.addListener(SWT.Selection, e -> listener.run());
    }

    /** Says a sentence instead of steps. */
    void say(String sentence) {
        heading.setText("");
        answer.say(sentence);
        next.setEnabled(false);
        layout();
    }

    /**
     * Shows what a target comes to.
     *
     * @param target a target of the plan
     * @param plan the plan
     * @param now where the stages stand
     */
    void show(Target target, ListPlan plan, Setting now) {
        Leg leg = plan.leg(target).orElseThrow();
        heading.setText(heading(target, leg, plan, now).replace("&", "&&"));
        Optional<Answer> found = leg.move().<Answer>map(move -> new Answer.Reached(move, List.of()))
                .or(leg::nearest);
        if (found.isPresent()) {
            Stop stop = plan.stop(leg);
            PlanRequest request = new PlanRequest(stop.target(), stop.tolerance(), plan.from(target),
                    plan.request().worn(), 0);
            answer.show(new Planned(plan.axis(), request, found.get()));
        } else {
            answer.say("It could be reached, but only at the price of leaving out another target.");
        }
        next.setEnabled(leg.move().isPresent());
        layout();
    }

    private static String heading(Target target, Leg leg, ListPlan plan, Setting now) {
        String title = title(target, leg);
        if (leg.move().isEmpty()) {
            return title + " is not reached." + (leg.nearest().isEmpty() ? "" : " The moves below are " + from(target, plan, now)
                    + ".");
        }
        if (leg.move().get().setting().equals(now)) {
            return title + ": the stages stand there now. The steps to it were";
        }
        return title + ", " + from(target, plan, now) + ":";
    }

    private static String from(Target target, ListPlan plan, Setting now) {
        if (plan.from(target).equals(now)) {
            return "from where the stages stand";
        }
        return plan.before(target).map(before -> "from " + lower(title(before, plan.leg(before).orElseThrow())))
                .orElse("from where the list begins") + ", where the stages do not stand now";
    }

    private static String title(Target target, Leg leg) {
        String name = Listing.text(target.getName());
        return "Target " + (leg.stop() + 1) + (name.isBlank() ? "" : " “" + name + "”");
    }

    private static String lower(String title) {
        return title.substring(0, 1).toLowerCase(Locale.ROOT) + title.substring(1);
    }

    /** Shows that what is shown may no longer be true, so that it must not be made. */
    void outdate() {
        answer.outdate();
        next.setEnabled(false);
    }

    private void layout() {
        content.layout(true, true);
        scroll.setMinHeight(content.computeSize(scroll.getClientArea().width, SWT.DEFAULT).y);
    }
}
