// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import pitchstack.analysis.accuracy.RunEvaluation;
import pitchstack.analysis.accuracy.Si;
import pitchstack.analysis.accuracy.Words;
import pitchstack.core.accuracy.evaluation.OneWayFigures;
import pitchstack.core.accuracy.evaluation.Positioning;
import pitchstack.core.accuracy.evaluation.Spread;
import pitchstack.core.accuracy.evaluation.TargetFigures;
import pitchstack.core.accuracy.evaluation.TwoWayFigures;
import pitchstack.core.accuracy.evaluation.ZeroReturns;
import pitchstack.core.plan.Wording;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Direction;
import pitchstack.core.units.Scale;
import pitchstack.core.units.TrueMinus;

/** The figures of ISO 230-2 for a person. */
final class EvaluateText {
    private static final String NONE = "–";

    private final PrintWriter out;
    private final RunEvaluation evaluation;
    private final AxisSpec axis;
    private final Scale scale;

    EvaluateText(PrintWriter out, RunEvaluation evaluation, AxisSpec axis) {
        this.out = out;
        this.evaluation = evaluation;
        this.axis = axis;
        scale = axis.scale();
    }

    /** Writes them. */
    void write(String title) {
        out.println(title);
        evaluation.positioning().ifPresent(figures -> {
            out.println();
            writeTargets(figures);
            out.println();
            writeAxis(figures);
        });
        evaluation.returns().ifPresent(this::write);
        out.println();
        evaluation.remarks().forEach(out::println);
        out.println("↑ from lower positions, ↓ from higher ones. Definitions in common use of ISO 230-2:2014.");
    }

    private void writeTargets(Positioning figures) {
        TextTable table = new TextTable("Position", "mean ↑", "s ↑", "mean ↓", "s ↓", "reversal", "R");
        for (TargetFigures target : figures.targets()) {
            table.add(TrueMinus.in(scale.format(scale.wrap(Si.counts(target.targetM(), scale)))),
                    size(target.up(), Spread::meanM), size(target.up(), Spread::deviationM),
                    size(target.down(), Spread::meanM), size(target.down(), Spread::deviationM),
                    target.isTwoWay() ? size(target.reversalM()) : NONE,
                    target.isTwoWay() ? size(target.repeatabilityM()) : NONE);
        }
        table.write(out);
    }

    private void writeAxis(Positioning figures) {
        TextTable table = new TextTable("Axis", "↑", "↓", "both");
        Optional<TwoWayFigures> both = figures.both();
        row(table, "Reversal B", figures, null, both.map(TwoWayFigures::reversalM));
        row(table, "Mean reversal", figures, null, both.map(TwoWayFigures::meanReversalM));
        row(table, "Repeatability R", figures, OneWayFigures::repeatabilityM, both.map(TwoWayFigures::repeatabilityM));
        row(table, "Systematic error E", figures, OneWayFigures::errorM, both.map(TwoWayFigures::errorM));
        row(table, "Mean error M", figures, null, both.map(TwoWayFigures::meanErrorM));
        row(table, "Accuracy A", figures, OneWayFigures::accuracyM, both.map(TwoWayFigures::accuracyM));
        table.write(out);
    }

    private void row(TextTable table, String name, Positioning figures, Function<OneWayFigures, Double> oneWay,
            Optional<Double> both) {
        table.add(name, oneWay == null ? NONE : figures.up().map(oneWay).map(this::size).orElse(NONE),
                oneWay == null ? NONE : figures.down().map(oneWay).map(this::size).orElse(NONE),
                both.map(this::size).orElse(NONE));
    }

    private void write(RunEvaluation.Returns returns) {
        ZeroReturns figures = returns.figures();
        out.println();
        out.println(TrueMinus.in("Coming back to " + new Wording(axis).setting(returns.setting())) + side(returns.direction())
                + ": " + figures.count() + " times, mean " + size(figures.meanM()) + ", s " + size(figures.deviationM())
                + ", the next within ± " + size(figures.nextWithinM()) + " of the mean with 95 %.");
        if (figures.drifts()) {
            out.println("It wanders by " + size(figures.slopeM()) + " from one time to the next, more than chance explains: warming"
                    + " up, settling or creep.");
        }
    }

    private static String side(Direction direction) {
        return switch (direction) {
            case FORWARD -> " from below";
            case BACK -> " from above";
            case UNKNOWN -> "";
        };
    }

    private String size(Optional<Spread> spread, ToDoubleFunction<Spread> figure) {
        return spread.map(one -> size(figure.applyAsDouble(one))).orElse(NONE);
    }

    private String size(double m) {
        return TrueMinus.in(Words.size(m, scale));
    }
}
