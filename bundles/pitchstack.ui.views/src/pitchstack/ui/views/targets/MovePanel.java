// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.targets;

import java.util.List;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.ISharedImages;
import pitchstack.core.plan.PlannedSetting;
import pitchstack.core.plan.Wording;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.Colours;
import pitchstack.ui.views.Notice;

/** One move: where it leads, its steps in large text, what it costs, and the button that makes it. */
final class MovePanel {
    private static final int NARROW = 60;
    private static final int BUTTON_WIDTH = 100;
    /** About the width of a step's number, so that a long step goes on below its first word. */
    private static final int WRAP_INDENT = 22;

    private final Composite panel;
    private final Label heading;
    private final StyledText steps;
    private final Notice worn;
    private final Label effort;
    private final Button apply;
    private PlannedSetting shown;
    private String cost = "";
    private boolean moves;

    MovePanel(Composite parent, Fonts fonts) {
        panel = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(panel);
        GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(panel);
        panel.setVisible(false);
        heading = new Label(panel, SWT.WRAP);
        heading.setFont(fonts.bold());
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(NARROW, SWT.DEFAULT).applyTo(heading);
        steps = new StyledText(panel, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY);
        steps.setFont(fonts.large());
        Colours.follow(steps, () -> steps.setBackground(panel.getBackground()));
        steps.setCaret(null);
        steps.setWrapIndent(WRAP_INDENT);
        Accessibles.name(steps, "Steps");
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(NARROW, SWT.DEFAULT).applyTo(steps);
        worn = new Notice(panel, ISharedImages.IMG_OBJS_WARN_TSK, 2);
        effort = new Label(panel, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).hint(NARROW, SWT.DEFAULT)
                .applyTo(effort);
        apply = new Button(panel, SWT.PUSH);
        apply.setText("Apply");
        apply.setToolTipText("Move the stages in the drawing as said here; Undo takes it back");
        GridDataFactory.fillDefaults().hint(BUTTON_WIDTH, SWT.DEFAULT).applyTo(apply);
        Accessibles.name(apply, () -> "Apply: " + heading.getText());
    }

    /** @param listener called when the move shall be made */
    void onApply(Runnable listener) {
        apply.addListener(SWT.Selection, e -> listener.run());
    }

    /**
     * Shows a move.
     *
     * @param planned the setting it leads to
     * @param answer the answer it belongs to
     */
    void show(PlannedSetting planned, Planned answer) {
        Wording wording = answer.wording();
        List<String> lines = answer.steps(planned);
        shown = planned;
        moves = !lines.isEmpty();
        heading.setText((leads(lines.size()) + wording.position(planned) + ".").replace("&", "&&"));
        steps.setText(moves ? String.join("\n", lines) : "The stages stand there already.");
        worn.say(wording.worn(planned).orElse(""));
        cost = "Effort " + wording.effort(planned);
        setOutdated(false);
        setShown(true);
    }

    /** What is to come must not read as if it were so already. */
    private static String leads(int steps) {
        return steps == 0 ? "Stands at " : steps == 1 ? "1 step leads to " : steps + " steps lead to ";
    }

    /** Shows no move. */
    void hide() {
        shown = null;
        setShown(false);
    }

    /** The setting shown, or {@code null}. */
    PlannedSetting shown() {
        return shown;
    }

    /** Whether the move can be made now. */
    boolean canApply() {
        return shown != null && apply.isEnabled();
    }

    /** Says whether the move no longer answers what is typed, so that it must not be made. */
    void setOutdated(boolean outdated) {
        apply.setEnabled(moves && !outdated);
        if (!outdated) {
            say(cost, null);
        }
    }

    /** Says in place of the effort that another move is being worked out; this one is grey until then. */
    void await(String words) {
        say(words, panel.getDisplay().getSystemColor(SWT.COLOR_WIDGET_DISABLED_FOREGROUND));
    }

    private void say(String words, Color colour) {
        effort.setText(words);
        heading.setForeground(colour);
        steps.setForeground(colour);
    }

    private void setShown(boolean visible) {
        ((GridData) panel.getLayoutData()).exclude = !visible;
        panel.setVisible(visible);
    }
}
