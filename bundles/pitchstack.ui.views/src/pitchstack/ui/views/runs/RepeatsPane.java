// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.runs;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import pitchstack.analysis.accuracy.RunEvaluation;
import pitchstack.analysis.accuracy.RunStudy;
import pitchstack.export.plot.PlotUnit;
import pitchstack.export.plot.RunPlot;
import pitchstack.ui.views.Flow;
import pitchstack.ui.views.Parts;
import pitchstack.ui.views.chart.ChartCanvas;

/** How well the carriage comes back: in words, as the figures of the standard, and drawn. */
final class RepeatsPane implements RunPage {
    private static final int[] PARTS = {55, 45};

    private final Runs runs;
    private final Parts parts;
    private final Label words;
    private final RepeatTable table;
    private final ChartCanvas chart;

    RepeatsPane(Composite parent, Runs runs) {
        this.runs = runs;
        parts = new Parts(parent);
        Composite left = new Composite(parts.place(), SWT.NONE);
        GridLayoutFactory.fillDefaults().extendedMargins(0, 4, 0, 0).spacing(0, 3).applyTo(left);
        words = new Label(left, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(60, SWT.DEFAULT).applyTo(words);
        table = new RepeatTable(left);
        GridDataFactory.fillDefaults().grab(true, true).hint(60, SWT.DEFAULT).applyTo(table.control());
        Composite line = Flow.in(left, 1, 6, false);
        Button every = new Button(line, SWT.CHECK);
        every.setText("Every &position");
        every.setToolTipText("Shows the figures of every position instead of those of the axis.");
        every.addListener(SWT.Selection, e -> table.turn(every.getSelection()));
        Button meaning = new Button(line, SWT.PUSH);
        meaning.setText("What is this?");
        meaning.setToolTipText("Says what each figure means");
        meaning.addListener(SWT.Selection, e -> Meanings.ofRepeats(left.getShell()));
        chart = new ChartCanvas(parts.place(), "Deviation at every position, from either side");
        parts.whole(left, PARTS[0]);
        parts.free(chart.control(), PARTS[1]);
    }

    @Override
    public Control control() {
        return parts.control();
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
        table.show(evaluation, study.run().spec());
        words(new RepeatWords(evaluation, study.run().spec()).all());
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
        ((GridData) table.control().getLayoutData()).heightHint = table.leastHeight();
        parts.fit();
    }
}
