// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.runs;

import java.util.Arrays;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import pitchstack.edit.RunWords;
import pitchstack.model.MeasurementRun;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.Chosen;
import pitchstack.ui.views.Flow;

/** Which run is looked at, and a new one. */
final class RunBar {
    private static final int GAP = 5;
    private static final int LEAST_LETTERS = 20;

    private final Combo runs;
    private final Button delete;

    RunBar(Composite parent, Runs state) {
        Composite line = Flow.in(parent, 1, GAP, true);
        new Label(line, SWT.NONE).setText("Run");
        runs = new Combo(line, SWT.READ_ONLY | SWT.DROP_DOWN);
        Chosen.tell(runs, "The run of measurements that is shown: its date, its instrument, and how many readings it has.");
        Accessibles.name(runs, "Run of measurements");
        runs.setLayoutData(Flow.Room.atLeast(LEAST_LETTERS, runs));
        runs.addListener(SWT.Selection, e -> state.choose(runs.getSelectionIndex()));
        Composite buttons = Flow.together(line, GAP);
        button(buttons, "&New Run", "Begins a run of measurements of this axis, dated today.", state::add);
        delete = button(buttons, "Delete Run", "Takes the run and its readings out of the file; corrections that were accepted "
                + "stay.", state::delete);
    }

    private static Button button(Composite parent, String text, String tooltip, Runnable action) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(text);
        button.setToolTipText(tooltip);
        button.addListener(SWT.Selection, e -> action.run());
        return button;
    }

    /** Lists the runs and marks the one that is looked at. */
    void show(Runs state) {
        List<MeasurementRun> all = state.all();
        String[] titles = all.stream().map(run -> RunWords.title(run) + ", " + count(run)).toArray(String[]::new);
        if (!Arrays.equals(titles, runs.getItems())) {
            runs.setItems(titles);
            runs.getParent().requestLayout();
        }
        runs.select(state.run().map(all::indexOf).orElse(-1));
        runs.setEnabled(!all.isEmpty());
        delete.setEnabled(state.run().isPresent());
    }

    private static String count(MeasurementRun run) {
        int count = run.getReadings().size();
        return count == 1 ? "1 reading" : count + " readings";
    }
}
