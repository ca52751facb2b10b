// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.accuracy;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import pitchstack.analysis.accuracy.Si;
import pitchstack.analysis.accuracy.TravelPoint;
import pitchstack.core.coverage.Outcome;
import pitchstack.export.plot.TravelPlot;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.Busy;
import pitchstack.ui.views.PageWork;
import pitchstack.ui.views.targets.Fonts;

/** The error along the travel: one stage moves over its range, the others stand where they do. */
final class TravelPage implements AccuracyPage {
    /** So many budgets take a fraction of a second, and more could not be told apart in a chart. */
    private static final int POINTS = 81;
    private static final String LAW = "One stage moves over its range while the others stand where they do; at each of"
            + " up to " + POINTS
            + " settings the budget is worked out as on the page Budget. The outer band is k·u of all contributions,"
            + " which holds the carriage with 95 % probability; the inner one is k times what does not repeat, which is"
            + " left once the rows have been measured and corrected. Near the ends fewer teeth are engaged, so less"
            + " averages.";

    private static final String FAILED =
            "The error along the travel could not be worked out; what went wrong is in the program's log.";

    private final TwinPage page;
    private final Combo stage;
    private final Label head;
    private final Label rest;
    private final PageWork work;
    private Looked looked;

    /** Points worked out for a stage. */
    private record Along(Looked looked, String title, List<TravelPoint> points) { }

    TravelPage(Composite parent) {
        page = new TwinPage(parent, "Error along the travel");
        new Label(page.content(), SWT.NONE).setText("Move");
        stage = new Combo(page.content(), SWT.READ_ONLY | SWT.DROP_DOWN);
        stage.setToolTipText("The stage that moves over its range; the others stand where they do.");
        Accessibles.name(stage, "Stage that moves");
        GridDataFactory.swtDefaults().span(TwinPage.COLUMNS - 1, 1).applyTo(stage);
        stage.addListener(SWT.Selection, e -> ask());
        Busy busy = new Busy(page.content(), TwinPage.COLUMNS, "Working out the error along the travel", this::rest);
        head = page.line();
        head.setFont(new Fonts(head).bold());
        rest = page.line();
        page.addToggle(page.content(), TwinPage.COLUMNS);
        work = new PageWork(page.control(), busy, this::ask);
    }

    @Override
    public Control control() {
        return page.control();
    }

    @Override
    public void show(Looked shown) {
        boolean same = shown.isSameAs(looked);
        looked = shown;
        if (!same) {
            nothing("");
        }
        List<String> titles = IntStream.range(0, looked.spec().stages().size())
                .mapToObj(j -> looked.spec().stages().get(j).title(j)).toList();
        if (!titles.equals(List.of(stage.getItems()))) {
            stage.setItems(titles.toArray(String[]::new));
            stage.select(looked.budget().longestStage());
        }
        ask();
    }

    private void ask() {
        Looked at = looked;
        int moves = Math.max(0, stage.getSelectionIndex());
        work.begin("Error along the travel", progress -> new Outcome.Done<>(along(at, moves)), FAILED, this::nothing,
                this::found);
    }

    private static Along along(Looked at, int moves) {
        return new Along(at, at.spec().stages().get(moves).title(moves), at.budget().along(at.now(), moves, POINTS));
    }

    private void nothing(String sentence) {
        TwinPage.say(head, sentence);
        TwinPage.say(rest, "");
        page.chart().say("");
        page.layout();
    }

    private void found(Along along) {
        List<TravelPoint> points = along.points().stream()
                .sorted(Comparator.comparingLong(p -> p.figures().position())).toList();
        if (points.size() < 2) {
            nothing(along.title() + " has fewer than two settings within the travel while the others stand where they"
                    + " do.");
            return;
        }
        Sizes sizes = along.looked().sizes();
        TravelPoint best = points.stream().min(Comparator.comparingDouble(p -> p.figures().expandedM())).orElseThrow();
        TravelPoint worst = points.stream().max(Comparator.comparingDouble(p -> p.figures().expandedM())).orElseThrow();
        TwinPage.say(head, "Along " + along.title() + " the carriage should stand within " + said(best, sizes)
                + " at best and " + said(worst, sizes) + " at worst (95 %).");
        TwinPage.say(rest, "The wide band in the chart is all that is uncertain; the narrow one between dashed lines"
                + " is what differs each time, and is left once the rows are measured. The dotted line is where the"
                + " carriage stands.");
        page.chart().show(new TravelPlot(points.stream().map(p -> point(p, sizes)).toList(),
                si(along.looked().spec().position(along.looked().now()), sizes), sizes.positions(), sizes.errors()));
        StringBuilder words = new StringBuilder(LAW);
        BudgetWords.add(words, "What was assumed, as the file does not say.",
                along.looked().budget().reading().assumptions());
        page.sources(words.toString());
        page.layout();
    }

    private static String said(TravelPoint point, Sizes sizes) {
        return sizes.within(point.figures().expandedM()) + " at " + sizes.scale().format(point.figures().position());
    }

    private static TravelPlot.Point point(TravelPoint p, Sizes sizes) {
        return new TravelPlot.Point(si(p.figures().position(), sizes), p.figures().expandedM(),
                p.figures().result().factor() * p.figures().result().varying());
    }

    private static double si(long position, Sizes sizes) {
        return Si.of(position, sizes.scale());
    }

    @Override
    public void rest() {
        work.rest();
    }

    @Override
    public void setFocus() {
        stage.setFocus();
    }
}
