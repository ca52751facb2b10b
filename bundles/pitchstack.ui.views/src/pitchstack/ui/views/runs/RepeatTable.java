// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.runs;

import java.util.Optional;
import java.util.function.Function;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.ui.part.PageBook;
import pitchstack.analysis.accuracy.RunEvaluation;
import pitchstack.analysis.accuracy.Si;
import pitchstack.core.accuracy.evaluation.OneWayFigures;
import pitchstack.core.accuracy.evaluation.Positioning;
import pitchstack.core.accuracy.evaluation.Spread;
import pitchstack.core.accuracy.evaluation.TargetFigures;
import pitchstack.core.accuracy.evaluation.TwoWayFigures;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.units.Scale;
import pitchstack.core.units.TrueMinus;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.Columns;
import pitchstack.ui.views.SettingText;

/** The figures of a run, of the axis as a whole or of every position. */
final class RepeatTable {
    private static final int FIGURES = 6;

    private final PageBook book;
    private final Table whole;
    private final Table each;
    private final Columns wholeColumns;
    private final Columns eachColumns;

    RepeatTable(Composite parent) {
        book = new PageBook(parent, SWT.NONE);
        whole = table("Figures of the axis");
        wholeColumns = new Columns(whole, 0, "Figure", "From below\t", "From above\t", "Both\t");
        each = table("Figures of every position");
        eachColumns = new Columns(each, 0, "Setting", "Expected\t", "Mean below\t", "s below\t", "Mean above\t", "s above\t",
                "Reversal\t", "R\t");
        turn(false);
    }

    private Table table(String name) {
        Table table = new Table(book, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        Accessibles.name(table, name);
        return table;
    }

    /** So high that all figures of the axis are in sight. */
    int leastHeight() {
        return Columns.height(whole, FIGURES);
    }

    Control control() {
        return book;
    }

    /** Shows the figures of every position, or of the whole. */
    void turn(boolean everyPosition) {
        book.showPage(everyPosition ? each : whole);
    }

    void setFocus() {
        (whole.isVisible() ? whole : each).setFocus();
    }

    void clear() {
        whole.removeAll();
        each.removeAll();
    }

    void show(RunEvaluation evaluation, AxisSpec axis) {
        clear();
        RepeatWords words = new RepeatWords(evaluation, axis);
        evaluation.positioning().ifPresent(figures -> {
            fill(figures, words);
            for (int i = 0; i < figures.targets().size(); i++) {
                fill(figures.targets().get(i), SettingText.setting(axis, evaluation.settings().get(i)), axis.scale(), words);
            }
        });
        wholeColumns.fit();
        eachColumns.fit();
    }

    private void fill(Positioning figures, RepeatWords words) {
        Function<Function<TwoWayFigures, Double>, String> both = one -> figures.both().map(one).map(words::size).orElse("");
        row("Reversal, B", figures, null, both.apply(TwoWayFigures::reversalM), words);
        row("Mean reversal, B̄", figures, null, both.apply(TwoWayFigures::meanReversalM), words);
        row("Repeatability, R", figures, OneWayFigures::repeatabilityM, both.apply(TwoWayFigures::repeatabilityM), words);
        row("Systematic error, E", figures, OneWayFigures::errorM, both.apply(TwoWayFigures::errorM), words);
        row("Mean error, M", figures, null, both.apply(TwoWayFigures::meanErrorM), words);
        row("Accuracy, A", figures, OneWayFigures::accuracyM, both.apply(TwoWayFigures::accuracyM), words);
    }

    private void row(String name, Positioning figures, Function<OneWayFigures, Double> oneWay, String both,
            RepeatWords words) {
        Function<Optional<OneWayFigures>, String> side = figure -> oneWay == null ? ""
                : figure.map(oneWay).map(words::size).orElse("");
        new TableItem(whole, SWT.NONE).setText(new String[] {name, side.apply(figures.up()), side.apply(figures.down()),
                TrueMinus.in(both)});
    }

    private void fill(TargetFigures target, String setting, Scale scale, RepeatWords words) {
        Function<Double, String> size = one -> TrueMinus.in(words.size(one));
        new TableItem(each, SWT.NONE).setText(new String[] {setting,
                TrueMinus.in(scale.format(Si.counts(target.targetM(), scale))),
                target.up().map(Spread::meanM).map(size).orElse(""), target.up().map(Spread::deviationM).map(size).orElse(""),
                target.down().map(Spread::meanM).map(size).orElse(""), target.down().map(Spread::deviationM).map(size).orElse(""),
                target.isTwoWay() ? size.apply(target.reversalM()) : "",
                target.isTwoWay() ? size.apply(target.repeatabilityM()) : ""});
    }
}
