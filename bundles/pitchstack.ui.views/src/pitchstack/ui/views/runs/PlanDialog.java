// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.runs;

import java.util.List;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Spinner;
import pitchstack.core.accuracy.fit.MeasuringPlan;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Direction;
import pitchstack.core.stack.Setting;
import pitchstack.ui.views.Accessibles;

/** Asks how thoroughly to measure, and says what that comes to. */
final class PlanDialog extends TitleAreaDialog {
    private static final int MOST_POINTS = 100;
    private static final int MOST_RUNS = 20;
    private static final int USUAL_POINTS = 5;
    private static final int USUAL_RUNS = 3;

    private final AxisSpec axis;
    private final Setting home;
    private Spinner points;
    private Spinner times;
    private Button both;
    private List<MeasuringPlan.Line> lines = List.of();

    /** @param home where the other stages stand while one is measured */
    PlanDialog(Shell parent, AxisSpec axis, Setting home) {
        super(parent);
        this.axis = axis;
        this.home = home;
    }

    /** The readings to take. */
    List<MeasuringPlan.Line> lines() {
        return lines;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText("Plan Measurements");
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
        GridLayoutFactory.swtDefaults().margins(12, 12).numColumns(2).applyTo(area);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
        setTitle("Which settings to measure");
        points = spinner(area, "Settings of each stage", 2, MOST_POINTS, USUAL_POINTS,
                "At how many settings, spread over its range, each stage is measured while the others stand where they are now.");
        times = spinner(area, "Times each", 1, MOST_RUNS, USUAL_RUNS,
                "How often each setting is measured from each side. Two tell how well it comes back; the standard asks for five.");
        both = new Button(area, SWT.CHECK);
        both.setText("From &both sides");
        both.setToolTipText("Comes to each setting from lower and from higher positions, which shows the play between them.");
        both.setSelection(true);
        both.addListener(SWT.Selection, e -> count());
        GridDataFactory.fillDefaults().span(2, 1).applyTo(both);
        return area;
    }

    private Spinner spinner(Composite parent, String label, int least, int most, int usual, String tooltip) {
        new Label(parent, SWT.NONE).setText(label);
        Spinner spinner = new Spinner(parent, SWT.BORDER);
        spinner.setValues(usual, least, most, 0, 1, 5);
        spinner.setToolTipText(tooltip);
        Accessibles.name(spinner, label);
        spinner.addListener(SWT.Modify, e -> count());
        return spinner;
    }

    @Override
    protected Control createContents(Composite parent) {
        Control contents = super.createContents(parent);
        count();
        return contents;
    }

    private void count() {
        if (both == null) {
            return;
        }
        boolean down = both.getSelection();
        lines = MeasuringPlan.of(axis, home, points.getSelection(), times.getSelection()).stream()
                .filter(line -> down || line.direction() == Direction.FORWARD).toList();
        long settings = lines.stream().map(MeasuringPlan.Line::setting).distinct().count();
        setMessage(lines.size() + " readings at " + settings + " settings. They are put into the table as rows to fill in.");
    }
}
