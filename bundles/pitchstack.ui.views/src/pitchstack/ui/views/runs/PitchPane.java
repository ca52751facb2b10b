// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.runs;

import java.util.List;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.part.PageBook;
import pitchstack.analysis.accuracy.AxisFit;
import pitchstack.analysis.accuracy.CorrectionGain;
import pitchstack.analysis.accuracy.RunStudy;
import pitchstack.edit.AcceptFit;
import pitchstack.export.plot.PlotUnit;
import pitchstack.export.plot.ResidualPlot;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.Chosen;
import pitchstack.ui.views.Columns;
import pitchstack.ui.views.Flow;
import pitchstack.ui.views.Notice;
import pitchstack.ui.views.Parts;
import pitchstack.ui.views.chart.ChartCanvas;

/** The pitches that a run tells, what they leave, what they buy, and the button that takes them over. */
final class PitchPane implements RunPage {
    private static final int[] PARTS = {55, 45};
    /** A stack has seldom more stages. */
    private static final int ROWS = 4;
    private static final int CHART_ROWS = 8;
    private static final String LEFT = "What the fit leaves of each reading";
    private static final String GAIN = "What it buys on the targets";
    private static final String TEETH = "Errors of single teeth";

    private final Runs runs;
    private final Runnable again;
    private final Parts parts;
    private final Notice open;
    private final Button telling;
    private final Label words;
    private final FitTable table;
    private final Button accept;
    private final Button withTeeth;
    private final Combo beside;
    private final PageBook book;
    private final ChartCanvas chart;
    private final GainTable gain;
    private final TeethPane teeth;
    private RunStudy study;
    private CorrectionGain bought;
    private String noGain = "";

    /** @param again called when it is to be worked out again */
    PitchPane(Composite parent, Runs runs, Runnable again) {
        this.runs = runs;
        this.again = again;
        parts = new Parts(parent);
        Composite left = column();
        open = new Notice(left, ISharedImages.IMG_OBJS_WARN_TSK, 1);
        telling = button(left, "Add &These Settings to the Run", "Puts the settings that would tell the stages apart into the table,"
                + " from both sides, to be read", this::addTelling);
        GridDataFactory.swtDefaults().exclude(true).applyTo(telling);
        telling.setVisible(false);
        words = new Label(left, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(60, SWT.DEFAULT).applyTo(words);
        table = new FitTable(left);
        GridDataFactory.fillDefaults().grab(true, true).hint(60, Columns.height(table.control(), ROWS)).applyTo(table.control());
        Composite line = Flow.in(left, 1, 6, false);
        accept = button(line, "&Accept", "Writes these corrections into the stages as one change; every plan then uses them",
                this::accept);
        withTeeth = new Button(line, SWT.CHECK);
        withTeeth.setText("with the errors of single &teeth");
        withTeeth.setToolTipText("Also writes errors of single indices that are larger than chance explains, in place of those that"
                + " the stages have.");
        withTeeth.addListener(SWT.Selection, e -> again.run());
        button(line, "What is this?", "Says how the pitches are found, and what the numbers mean", () -> Meanings.ofPitches(
                line.getShell()));
        Composite right = column();
        beside = new Combo(right, SWT.READ_ONLY | SWT.DROP_DOWN);
        Chosen.tell(beside, "What is shown beside the pitches.");
        Accessibles.name(beside, "Beside the pitches");
        beside.setItems(LEFT, GAIN, TEETH);
        beside.select(0);
        beside.addListener(SWT.Selection, e -> turn());
        GridDataFactory.fillDefaults().grab(true, false).hint(60, SWT.DEFAULT).applyTo(beside);
        book = new PageBook(right, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).hint(60, Columns.height(table.control(), CHART_ROWS)).applyTo(book);
        chart = new ChartCanvas(book, "What the fit leaves of each reading");
        gain = new GainTable(book);
        teeth = new TeethPane(book);
        parts.whole(left, PARTS[0]);
        parts.whole(right, PARTS[1]);
        turn();
    }

    private Composite column() {
        Composite column = new Composite(parts.place(), SWT.NONE);
        GridLayoutFactory.fillDefaults().extendedMargins(0, 4, 0, 0).spacing(0, 3).applyTo(column);
        return column;
    }

    private static Button button(Composite parent, String text, String tooltip, Runnable action) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(text);
        button.setToolTipText(tooltip);
        button.addListener(SWT.Selection, e -> action.run());
        return button;
    }

    @Override
    public Control control() {
        return parts.control();
    }

    @Override
    public void setFocus() {
        table.control().setFocus();
    }

    /** Whether errors of single indices are to be taken over. */
    boolean withIndexErrors() {
        return withTeeth.getSelection();
    }

    @Override
    public void show(Runs of) {
        accept.setEnabled(false);
    }

    @Override
    public void say(String sentence) {
        study = null;
        open("", false);
        words.setText(sentence.replace("&", "&&"));
        table.clear();
        chart.say("");
        accept.setEnabled(false);
        withTeeth.setEnabled(false);
        turn();
        relayout();
    }

    @Override
    public void found(RunStudy found) {
        AxisFit fit = found.fit();
        if (fit.fit().isEmpty()) {
            say("");
            open(fit.whyNot().orElse(""), !fit.proposals().isEmpty());
            study = found;
            relayout();
            return;
        }
        study = found;
        open("", false);
        bought = null;
        noGain = runs.axis().getTargets().isEmpty() ? "The file has no targets to compare by." : "Planning the targets…";
        words();
        table.show(fit, runs.axis());
        chart.show(residuals(fit));
        if (!fit.maps().isEmpty()) {
            teeth.show(fit);
        }
        accept.setEnabled(true);
        withTeeth.setEnabled(!fit.maps().isEmpty());
        turn();
        relayout();
    }

    private void words() {
        String buys = bought == null ? "" : GainTable.words(bought, runs.scale()) + "\n";
        words.setText((buys + new FitWords(study.fit()).all()).strip().replace("&", "&&"));
    }

    /** Shows what the pitches buy. */
    void bought(CorrectionGain found) {
        bought = found;
        gain.show(found, study.fit().run().spec());
        words();
        turn();
        relayout();
    }

    /** Says why it is not known what they buy. */
    void noGain(String sentence) {
        noGain = sentence;
        turn();
    }

    private ResidualPlot residuals(AxisFit fit) {
        List<ResidualPlot.Point> points = fit.fit().orElseThrow().residuals().stream().map(one -> new ResidualPlot.Point(
                one.reading().positionM(), one.residualM(), one.outlier())).toList();
        return new ResidualPlot(points, PlotUnit.ofPositions(runs.scale()), PlotUnit.ofErrors(runs.scale()));
    }

    private void turn() {
        boolean fitted = study != null && study.fit().fit().isPresent();
        String chosen = beside.getText();
        boolean isTeeth = false;
        if (fitted && chosen.equals(GAIN) && bought != null) {
            book.showPage(gain.control());
        } else if (fitted && chosen.equals(TEETH) && !study.fit().maps().isEmpty()) {
            book.showPage(teeth.control());
            isTeeth = true;
        } else {
            if (!fitted || !chosen.equals(LEFT)) {
                chart.say(fitted ? chosen.equals(GAIN) ? noGain
                        : "Errors of single teeth need three indices of a stage read twice each while no other moves." : "");
            } else {
                chart.show(residuals(study.fit()));
            }
            book.showPage(chart.control());
        }
        // A chart and a table need twice the height.
        int height = Columns.height(table.control(), isTeeth ? 2 * CHART_ROWS : CHART_ROWS);
        GridData data = (GridData) book.getLayoutData();
        if (data.heightHint != height) {
            data.heightHint = height;
            parts.fit();
        }
    }

    private void open(String sentence, boolean canAdd) {
        open.say(sentence);
        ((GridData) telling.getLayoutData()).exclude = !canAdd;
        telling.setVisible(canAdd);
    }

    private void relayout() {
        parts.fit();
    }

    private void addTelling() {
        if (study != null) {
            new ReadingEdits(runs).plan(study.fit().proposals(), true);
        }
    }

    private void accept() {
        runs.run().filter(run -> study != null && study.fit().fit().isPresent()).ifPresent(run -> runs.session().run(
                new AcceptFit(runs.axis(), run, study.fit(), withIndexErrors())));
    }
}
