// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import pitchstack.analysis.accuracy.AccuracyReading;
import pitchstack.analysis.accuracy.BudgetLine;
import pitchstack.analysis.accuracy.SettingFigures;
import pitchstack.analysis.accuracy.Words;
import pitchstack.core.plan.Wording;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.units.TrueMinus;

/** A budget for a person. */
final class BudgetText {
    /** Lines of less than half a thousandth of the variance are shown together. */
    private static final double LEAST_SHARE = 0.0005;
    private static final String ALIKE = " and others alike";

    private final PrintWriter out;
    private final AccuracyReading reading;
    private final BudgetOptions.Chosen chosen;
    private final SettingFigures figures;
    private final AxisSpec axis;

    BudgetText(PrintWriter out, AccuracyReading reading, BudgetOptions.Chosen chosen, SettingFigures figures) {
        this.out = out;
        this.reading = reading;
        this.chosen = chosen;
        this.figures = figures;
        axis = reading.spec();
    }

    /** Writes it, with models and assumptions where they are wanted. */
    void write(String title, boolean withAssumptions) {
        out.println(title + ", axis “" + axis.name() + "”");
        out.println("Position: " + TrueMinus.in(axis.scale().format(figures.position()) + " ("
                + new Wording(axis).setting(figures.setting())) + "), " + chosen.how());
        out.println();
        writeLines(withAssumptions);
        out.println();
        out.println("u = " + size(figures.combinedM()) + ": " + size(figures.result().repeating())
                + " repeats and can be measured and corrected, " + size(figures.result().varying()) + " varies each time.");
        out.println("U = " + size(figures.expandedM()) + " holds it with 95 % (k = "
                + String.format(Locale.ROOT, "%.2f", figures.result().factor()) + ", " + freedom(figures.result()
                        .degreesOfFreedom()) + " effective degrees of freedom).");
        out.println();
        if (withAssumptions) {
            writeAssumptions();
        } else {
            out.println("Computed, not measured; " + reading.assumptions().size() + " assumptions: --assumptions");
        }
    }

    private void writeLines(boolean all) {
        TextTable table = new TextTable("Contribution", "u", "share", "type", "distribution", "deg. of freedom", "each time");
        double rest = 0;
        double restShare = 0;
        int left = 0;
        for (BudgetLine line : figures.lines()) {
            if (!all && Math.abs(line.share()) < LEAST_SHARE) {
                rest = Math.hypot(rest, line.uncertaintyM());
                restShare += line.share();
                left++;
            } else {
                table.add(line.name(), size(line.uncertaintyM()), share(line.share()), line.type(), line.distribution(),
                        freedom(line.input().degreesOfFreedom()), line.repeats() ? "same" : "varies");
            }
        }
        if (left > 0) {
            table.add(left == 1 ? "1 smaller one" : left + " smaller ones", size(rest), share(restShare), "", "", "", "");
        }
        table.write(out);
        figures.sharing().ifPresent(out::println);
    }

    private void writeAssumptions() {
        out.println("Inputs, as standard uncertainty × sensitivity:");
        TextTable inputs = new TextTable("  Contribution", "input");
        figures.lines().forEach(line -> inputs.add("  " + line.name(), line.comesIn(axis.scale().turn() > 0)));
        inputs.write(out);
        out.println();
        out.println("Models:");
        Map<String, String> models = new LinkedHashMap<>();
        figures.lines().forEach(line -> models.merge(line.model(), line.name(), (first, next) -> first.endsWith(ALIKE) ? first
                : first + ALIKE));
        models.forEach((model, names) -> out.println("  " + names + ": " + model));
        out.println();
        out.println("Assumed:");
        reading.assumptions().forEach(sentence -> out.println("  " + sentence));
    }

    private String size(double m) {
        return Words.size(m, axis.scale());
    }

    private static String share(double share) {
        return TrueMinus.in(String.format(Locale.ROOT, "%.1f %%", 100 * share));
    }

    static String freedom(double freedom) {
        return Double.isInfinite(freedom) || freedom > 1e6 ? "∞" : String.format(Locale.ROOT, "%.0f", Math.floor(freedom));
    }
}
