// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.runs;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import pitchstack.analysis.accuracy.RunEvaluation;
import pitchstack.analysis.accuracy.RunStudy;
import pitchstack.export.plot.PlotUnit;
import pitchstack.export.plot.RunPlot;
import pitchstack.ui.views.chart.ChartCanvas;

/** How well the carriage comes back: in words, as the figures of the standard, and drawn. */
final class RepeatsPane implements RunPage {
    private static final int[] PARTS = {55, 45};

    private final Runs runs;
    private final SashForm pane;
    private final Label words;
    private final RepeatTable table;
    private final ChartCanvas chart;

    RepeatsPane(Composite parent, Runs runs) {
        this.runs = runs;
        pane = Turning.parts(parent);
        Composite left = new Composite(pane, SWT.NONE);
        GridLayoutFactory.fillDefaults().extendedMargins(0, 4, 0, 0).spacing(0, 3).applyTo(left);
        words = new Label(left, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(60, SWT.DEFAULT).applyTo(words);
        table = new RepeatTable(left);
        GridDataFactory.fillDefaults().grab(true, true).hint(60, 110).applyTo(table.control());
        Composite line = new Composite(left, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(6, 0).applyTo(line);
        Button every = new Button(line, SWT.CHECK);
        every.setText("Every &position");
        every.setToolTipText("Shows the figures of every position instead of those of the axis.");
        every.addListener(SWT.Selection, e -> table.turn(every.getSelection()));
        Button meaning = new Button(line, SWT.PUSH);
        meaning.setText("What is this?");
        meaning.setToolTipText("Says what each figure means");
        meaning.addListener(SWT.Selection, e -> Meanings.ofRepeats(pane.getShell()));
        chart = new ChartCanvas(pane, "Deviation at every position, from either side");
        pane.setWeights(PARTS);
    }

    @Override
    public Control control() {
        return pane;
    }

    @Override
    public void setFocus() {
        table.setFocus();
    }

    @Override
    public void show(Runs of) {
        // What was found stays until it is worked out anew.
    }

    @Override
    public void found(RunStudy study) {
        RunEvaluation evaluation = study.evaluation();
        words(new RepeatWords(evaluation, study.run().spec()).all());
        table.show(evaluation, study.run().spec());
        if (evaluation.positioning().isPresent()) {
            chart.show(new RunPlot(evaluation.positioning().get(), PlotUnit.ofPositions(runs.scale()),
                    PlotUnit.ofErrors(runs.scale())));
        } else {
            chart.say("Visit settings twice from the same side, and the figures are shown here.");
        }
    }

    @Override
    public void say(String sentence) {
        words(sentence);
        table.clear();
        chart.say("");
    }

    private void words(String text) {
        words.setText(text.replace("&", "&&"));
        words.getParent().layout(true, true);
    }
}
