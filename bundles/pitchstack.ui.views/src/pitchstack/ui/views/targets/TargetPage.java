// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.targets;

import java.util.function.Consumer;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;

/** The parts of the Target view below each other: where the axis stands, the question, the saved targets, the answer. */
final class TargetPage {
    private static final int MARGIN = 8;
    private static final int NARROW = 60;
    /** The saved targets take at most this part of the height, so that the answer below them is in sight. */
    private static final double SAVED_PART = 0.4;

    private final ScrolledComposite scroll;
    private final Composite content;
    private final Label heading;
    private final QuestionForm form;
    private final SavedTargets saved;
    private final AnswerPane answer;

    TargetPage(Composite parent) {
        scroll = new ScrolledComposite(parent, SWT.V_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        content = new Composite(scroll, SWT.NONE);
        scroll.setContent(content);
        GridLayoutFactory.swtDefaults().margins(MARGIN, MARGIN).numColumns(QuestionForm.COLUMNS).applyTo(content);
        heading = new Label(content, SWT.WRAP);
        heading.setFont(new Fonts(heading).bold());
        GridDataFactory.fillDefaults().grab(true, false).span(QuestionForm.COLUMNS, 1).hint(NARROW, SWT.DEFAULT)
                .applyTo(heading);
        form = new QuestionForm(content);
        saved = new SavedTargets(content, QuestionForm.COLUMNS);
        answer = new AnswerPane(content, QuestionForm.COLUMNS, this::layout);
        scroll.addListener(SWT.Resize, e -> layout());
    }

    Control control() {
        return scroll;
    }

    QuestionForm form() {
        return form;
    }

    SavedTargets saved() {
        return saved;
    }

    AnswerPane answer() {
        return answer;
    }

    /** Says above all where the axis stands. A drag says so at every tooth, which must not wait for all to be laid out. */
    void head(String sentence) {
        heading.setText(sentence.replace("&", "&&"));
        if (heading.computeSize(heading.getSize().x, SWT.DEFAULT).y != heading.getSize().y) {
            layout();
        }
    }

    /** @param listener called when M1+Enter is pressed, wherever in the page the focus is */
    void onApplyKey(Runnable listener) {
        onKey(content, e -> {
            boolean enter = e.keyCode == SWT.CR || e.keyCode == SWT.KEYPAD_CR;
            if (enter && (e.stateMask & SWT.MODIFIER_MASK) == SWT.MOD1) {
                e.doit = false;
                listener.run();
            }
        });
    }

    private static void onKey(Composite parent, Consumer<Event> listener) {
        for (Control child : parent.getChildren()) {
            child.addListener(SWT.KeyDown, listener::accept);
            if (child instanceof Composite inner) {
                onKey(inner, listener);
            }
        }
    }

    /** Lays out anew after texts have changed. A long answer takes room from the saved targets. */
    void layout() {
        Rectangle area = scroll.getClientArea();
        int most = (int) (SAVED_PART * area.height);
        int lacking = heightWithin(most, area.width) - area.height;
        scroll.setMinHeight(lacking > 0 ? heightWithin(saved.height() - lacking, area.width) : area.height + lacking);
        // All sizes have just been measured.
        content.layout(false, true);
    }

    private int heightWithin(int savedHeight, int width) {
        saved.fitWithin(savedHeight);
        return content.computeSize(width, SWT.DEFAULT).y;
    }
}
