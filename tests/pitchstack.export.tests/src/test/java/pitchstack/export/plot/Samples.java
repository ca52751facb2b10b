// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.plot;

import java.util.List;
import java.util.stream.IntStream;
import pitchstack.core.accuracy.budget.Budget;
import pitchstack.core.accuracy.budget.Contribution;
import pitchstack.core.accuracy.budget.Distribution;
import pitchstack.core.accuracy.budget.Persistence;
import pitchstack.core.accuracy.evaluation.Positioning;
import pitchstack.core.accuracy.evaluation.TargetVisits;
import pitchstack.core.accuracy.teeth.TwoFlankLaw;

/** One plot of every kind, of made-up numbers. */
final class Samples {
    private Samples() {
    }

    /** Three contributions whose squares are 9, 4 and 3 parts of 16. */
    static BudgetBars budget() {
        return new BudgetBars(new Budget(List.of(
                Contribution.believed("Rack", Distribution.NORMAL, 2e-6),
                Contribution.believed("Seat", Distribution.NORMAL, Math.sqrt(3) * 1e-6).that(Persistence.VARIES),
                Contribution.believed("Fine row", Distribution.NORMAL, 3e-6))).result());
    }

    /** Ten teeth of 200 N/mm, 30 µm. */
    static BearingPlot bearing(double nowN) {
        TwoFlankLaw law = new TwoFlankLaw(10, 200e3, 30e-6, Math.toRadians(20));
        return new BearingPlot(IntStream.rangeClosed(1, 100).mapToObj(i -> {
            TwoFlankLaw.Point at = law.at(i, 0);
            return new BearingPlot.Point(i, at.bearingShare(), at.spreadM());
        }).toList(), nowN, PlotUnit.UM);
    }

    static TravelPlot travel(double nowM) {
        return new TravelPlot(IntStream.rangeClosed(0, 10).mapToObj(i ->
                new TravelPlot.Point(i * 0.1, 1e-6 * (20 + 5 * i), 12e-6)).toList(), nowM, PlotUnit.MM, PlotUnit.UM);
    }

    /** Two targets, two visits from each side, in µm: up {1, 3} and {0, 2}, down {−1, 1} and {4, 6}. */
    static RunPlot run() {
        return new RunPlot(Positioning.of(List.of(new TargetVisits(0, List.of(1e-6, 3e-6), List.of(-1e-6, 1e-6)),
                new TargetVisits(1e-3, List.of(0.0, 2e-6), List.of(4e-6, 6e-6)))), PlotUnit.MM, PlotUnit.UM);
    }

    static ResidualPlot residuals() {
        return new ResidualPlot(IntStream.range(0, 12).mapToObj(i -> new ResidualPlot.Point(i * 0.05,
                (i * 7 % 5 - 2) * 1e-6 * (i == 8 ? 6 : 1), i == 8)).toList(), PlotUnit.MM, PlotUnit.UM);
    }

    /** Of five indices that stand off by −4 to 4 µm, known to ± 3 µm, the two outermost by more; two stages alike. */
    static IndexErrorPlot indexErrors() {
        return new IndexErrorPlot(List.of("Rack", "Fine row").stream().map(name -> new IndexErrorPlot.Stage(name,
                IntStream.rangeClosed(-2, 2).mapToObj(i -> new IndexErrorPlot.Point(i, i * 2e-6, 3e-6)).toList())).toList(),
                PlotUnit.UM);
    }

    static WarmthPlot warmth() {
        return new WarmthPlot(IntStream.rangeClosed(15, 28).mapToObj(t ->
                new WarmthPlot.Point(t, (t - 20) * 4e-6, 8e-6)).toList(), 24, PlotUnit.UM, true);
    }

    static List<Plot> all() {
        return List.of(budget(), bearing(35), travel(0.4), run(), residuals(), indexErrors(), warmth());
    }
}
