// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.targets;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.ISharedImages;
import pitchstack.core.plan.WornPolicy;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.Notice;
import pitchstack.ui.views.SettingText;

/** The fields in which the question is typed, in a grid of {@value #COLUMNS} columns. */
final class QuestionForm {
    /** Columns that the parent's grid must have: name, field, unit. */
    static final int COLUMNS = 3;
    /** In the order of {@link WornPolicy}. */
    private static final String[] POLICIES = {"Avoid worn teeth", "Allow worn teeth", "Never use worn teeth"};
    private static final int FIELD_WIDTH = 80;
    private static final int MODES_APART = 12;

    private final Button position;
    private final Button distance;
    private final Label targetName;
    private final Text target;
    private final Label meaning;
    private final Label targetUnit;
    private final Notice badTarget;
    private final Text tolerance;
    private final Label toleranceUnit;
    private final Notice badTolerance;
    private final Combo worn;
    private Runnable typed = () -> { };
    private boolean showing;

    QuestionForm(Composite parent) {
        new Label(parent, SWT.NONE).setText("Give");
        Composite modes = new Composite(parent, SWT.NONE);
        RowLayoutFactory.fillDefaults().spacing(MODES_APART).applyTo(modes);
        GridDataFactory.fillDefaults().span(2, 1).hint(FIELD_WIDTH, SWT.DEFAULT).applyTo(modes);
        position = mode(modes, "Position", "The target is where the carriage shall stand.");
        distance = mode(modes, "Distance from here", "The target is so far from where the stages stand now; positive towards "
                + "higher positions, negative towards lower ones.");
        targetName = new Label(parent, SWT.NONE);
        target = field(parent, "Where the carriage shall stand. Press Enter to plan, and Enter again to apply.");
        Accessibles.name(target, targetName::getText);
        targetUnit = unit(parent);
        meaning = new Label(parent, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).span(COLUMNS, 1).hint(FIELD_WIDTH, SWT.DEFAULT).applyTo(meaning);
        badTarget = new Notice(parent, ISharedImages.IMG_OBJS_ERROR_TSK, COLUMNS);
        new Label(parent, SWT.NONE).setText("Tolerance");
        tolerance = field(parent, "The largest error that counts as reached; empty for the tolerance of the axis.");
        Accessibles.name(tolerance, "Tolerance");
        toleranceUnit = unit(parent);
        badTolerance = new Notice(parent, ISharedImages.IMG_OBJS_ERROR_TSK, COLUMNS);
        new Label(parent, SWT.NONE).setText("Worn teeth");
        worn = new Combo(parent, SWT.READ_ONLY | SWT.DROP_DOWN);
        worn.setItems(POLICIES);
        worn.select(0);
        worn.setToolTipText(SettingText.WORN_CHOICES);
        worn.addListener(SWT.Selection, e -> tell());
        Accessibles.name(worn, "Worn teeth");
        GridDataFactory.fillDefaults().span(2, 1).hint(FIELD_WIDTH, SWT.DEFAULT).applyTo(worn);
        show(false);
    }

    private Button mode(Composite parent, String text, String tooltip) {
        Button button = new Button(parent, SWT.RADIO);
        button.setText(text);
        button.setToolTipText(tooltip);
        button.addListener(SWT.Selection, e -> {
            if (button.getSelection()) {
                show(button == distance);
                tell();
            }
        });
        return button;
    }

    private void show(boolean relative) {
        position.setSelection(!relative);
        distance.setSelection(relative);
        targetName.setText(relative ? "Distance" : "Target");
        explain("");
        targetName.getParent().layout();
    }

    private Text field(Composite parent, String tooltip) {
        Text text = new Text(parent, SWT.SINGLE | SWT.BORDER);
        text.setToolTipText(tooltip);
        text.addListener(SWT.Modify, e -> tell());
        GridDataFactory.fillDefaults().grab(true, false).hint(FIELD_WIDTH, SWT.DEFAULT).applyTo(text);
        return text;
    }

    private static Label unit(Composite parent) {
        return new Label(parent, SWT.NONE);
    }

    private void tell() {
        if (!showing) {
            typed.run();
        }
    }

    /** @param listener called after each change that a person makes */
    void onTyped(Runnable listener) {
        typed = listener;
    }

    /** @param listener called when Enter is pressed in one of the two text fields */
    void onEnter(Runnable listener) {
        target.addListener(SWT.DefaultSelection, e -> listener.run());
        tolerance.addListener(SWT.DefaultSelection, e -> listener.run());
    }

    /** What stands in the fields now. */
    Question question() {
        return new Question(target.getText(), distance.getSelection(), tolerance.getText(), WornPolicy.values()[worn.getSelectionIndex()]);
    }

    /** Fills the fields without telling. */
    void show(Question question) {
        showing = true;
        show(question.relative());
        target.setText(question.target());
        tolerance.setText(question.tolerance());
        worn.select(question.worn().ordinal());
        showing = false;
    }

    /**
     * Shows what is meant where nothing is typed.
     *
     * @param unit the unit of both fields
     * @param axisTolerance the tolerance of the axis, in words
     */
    void hint(String unit, String axisTolerance) {
        targetUnit.setText(unit);
        toleranceUnit.setText(unit);
        tolerance.setMessage(axisTolerance + " (axis)");
    }

    /** Says under the target what it means, or nothing. */
    void explain(String sentence) {
        meaning.setText(sentence);
        ((GridData) meaning.getLayoutData()).exclude = sentence.isEmpty();
        meaning.setVisible(!sentence.isEmpty());
    }

    /** Shows under the fields what cannot be read in them. */
    void problem(Question.Reading reading) {
        badTarget.say(reading instanceof Question.Reading.BadTarget bad ? bad.sentence() : "");
        badTolerance.say(reading instanceof Question.Reading.BadTolerance bad ? bad.sentence() : "");
    }

    void setFocus() {
        target.setFocus();
        target.selectAll();
    }

    /** Lets the next target be typed over the last one. */
    void readyForNext() {
        target.selectAll();
    }
}
