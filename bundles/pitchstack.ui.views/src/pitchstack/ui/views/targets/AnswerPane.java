// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.targets;

import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import pitchstack.core.plan.Answer;
import pitchstack.core.plan.PlanRequest;
import pitchstack.core.plan.PlannedSetting;
import pitchstack.core.stack.AxisSpec;

/** The answer: one move and the other choices, or the reason and the moves to both neighbours, or a sentence. */
public final class AnswerPane {
    private static final int NARROW = 60;

    private final Label sentence;
    private final MovePanel first;
    private final MovePanel second;
    private final ChoiceTable choices;
    private Planned planned;
    private boolean outdated;
    private Consumer<PlannedSetting> shown = move -> { };

    /**
     * @param parent where it stands, laid out as a grid
     * @param span the columns of the grid
     * @param resized called when another choice has changed the room that is needed
     */
    public AnswerPane(Composite parent, int span, Runnable resized) {
        Composite pane = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(5, 10).applyTo(pane);
        GridDataFactory.fillDefaults().grab(true, false).span(span, 1).applyTo(pane);
        Fonts fonts = new Fonts(pane);
        sentence = new Label(pane, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(NARROW, SWT.DEFAULT).applyTo(sentence);
        first = new MovePanel(pane, fonts);
        second = new MovePanel(pane, fonts);
        choices = new ChoiceTable(pane);
        choices.onChoice(() -> {
            reach(choices.chosen());
            resized.run();
        });
    }

    /** @param listener called with the setting to move to */
    public void onApply(Consumer<PlannedSetting> listener) {
        first.onApply(() -> listener.accept(first.shown()));
        second.onApply(() -> listener.accept(second.shown()));
    }

    /** @param listener called with the move that is shown, while there is just one to look at, or with {@code null} */
    public void onShown(Consumer<PlannedSetting> listener) {
        shown = listener;
    }

    /** @param listener called when Enter is pressed on one of the choices */
    void onEnter(Runnable listener) {
        choices.onEnter(listener);
    }

    /** @param listener called when more choices shall be listed */
    void onMore(Runnable listener) {
        choices.onMore(listener);
    }

    /** Says a sentence instead of an answer. */
    public void say(String text) {
        planned = null;
        first.hide();
        second.hide();
        choices.hide();
        saying(text);
        shown.accept(null);
    }

    /** Shows an answer. */
    public void show(Planned answer) {
        planned = answer;
        outdated = false;
        choices.show(answer);
        if (answer.answer() instanceof Answer.Nearest nearest) {
            saying(answer.wording().reason(answer.request().target(), answer.request().tolerance(), nearest));
            neighbour(first, nearest.below());
            neighbour(second, nearest.above());
            shown.accept(null);
        } else {
            saying("");
            second.hide();
            reach(answer.choices().get(0));
        }
    }

    /** Says that what is shown no longer answers what is typed, so that it must not be applied. */
    public void outdate() {
        outdated = true;
        first.setOutdated(true);
        second.setOutdated(true);
    }

    /**
     * Says that an answer is being worked out. One of the same axis that was shown before stays in its place, in grey, so
     * that nothing jumps; it is proposed no more.
     *
     * @param axis the axis that is asked about now
     * @param words what is said
     */
    void await(AxisSpec axis, String words) {
        if (planned == null || !planned.axis().equals(axis)) {
            say(words);
            return;
        }
        first.await(words);
        second.await(words);
        shown.accept(null);
    }

    /**
     * Takes what is shown for the answer again, with the choice that was made in it.
     *
     * @param axis the axis that is asked about now
     * @param request what is asked now
     * @return whether it was the answer to that
     */
    boolean confirm(AxisSpec axis, PlanRequest request) {
        if (planned == null || !planned.axis().equals(axis) || !planned.request().equals(request)) {
            return false;
        }
        outdated = false;
        first.setOutdated(false);
        second.setOutdated(false);
        shown.accept(planned.answer() instanceof Answer.Reached ? first.shown() : null);
        return true;
    }

    /** The move that Enter applies: the chosen one, where the target is reached and there is something to move. */
    Optional<PlannedSetting> applicable() {
        boolean reached = planned != null && planned.answer() instanceof Answer.Reached;
        return reached && first.canApply() ? Optional.of(first.shown()) : Optional.empty();
    }

    private void reach(PlannedSetting choice) {
        first.show(choice, planned);
        first.setOutdated(outdated);
        shown.accept(choice);
    }

    private void neighbour(MovePanel panel, Optional<PlannedSetting> neighbour) {
        if (neighbour.isPresent()) {
            panel.show(neighbour.get(), planned);
        } else {
            panel.hide();
        }
    }

    private void saying(String text) {
        sentence.setText(text.replace("&", "&&"));
        ((GridData) sentence.getLayoutData()).exclude = text.isEmpty();
        sentence.setVisible(!text.isEmpty());
    }
}
