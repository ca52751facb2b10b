// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

import java.util.Locale;
import java.util.Optional;
import pitchstack.core.accuracy.budget.BudgetResult;
import pitchstack.core.accuracy.budget.Contribution;
import pitchstack.core.accuracy.budget.Distribution;
import pitchstack.core.accuracy.budget.Method;
import pitchstack.core.accuracy.budget.Persistence;
import pitchstack.core.accuracy.total.Cause;
import pitchstack.core.units.TrueMinus;

/**
 * One line of a budget as window and command line show it.
 *
 * @param cause what it stands for
 * @param input what went in
 * @param share its part of the combined variance; all add up to 1, and one can be below 0 where it takes away from others
 */
public record BudgetLine(Optional<Cause> cause, Contribution input, double share) {
    private static final double PPM = 1e-6;
    private static final double MM = 1e3;

    static BudgetLine of(BudgetResult.Line line) {
        return new BudgetLine(Cause.of(line.contribution()), line.contribution(), line.share());
    }

    /** What it is, for people. */
    public String name() {
        return input.name();
    }

    /** Standard uncertainty in the result, at least 0: metres, on a rotary axis radians. */
    public double uncertaintyM() {
        return Math.abs(input.amount());
    }

    /** A or B, after the GUM. */
    public String type() {
        return input.method() == Method.TYPE_A ? "A" : "B";
    }

    /** The shape of what is not known. */
    public String distribution() {
        return words(input.distribution());
    }

    /** Whether the error comes back the same each time, so that it can be measured and corrected. */
    public boolean repeats() {
        return input.persistence() == Persistence.REPEATS;
    }

    /** The model behind the number. */
    public String model() {
        return cause.map(Cause::model).orElse("");
    }

    /**
     * How the input comes into the result: its own uncertainty and the sensitivity, with their units.
     *
     * @param rotary whether radians stand for metres
     */
    public String comesIn(boolean rotary) {
        double u = input.standardUncertainty();
        double c = input.sensitivity();
        Cause.Per per = c == 1 ? Cause.Per.RESULT : cause.map(Cause::per).orElse(Cause.Per.RESULT);
        return TrueMinus.in(switch (per) {
            case RESULT -> Words.size(u, rotary) + " × " + String.format(Locale.ROOT, "%.3g", c);
            case PITCH -> String.format(Locale.ROOT, "%.1f ppm × %s", u / PPM, way(c, rotary));
            case KELVIN -> String.format(Locale.ROOT, "%.2f K × %s/K", u, Words.size(c, rotary));
            case PER_KELVIN -> String.format(Locale.ROOT, "%.2f ppm/K × %.1f mm·K", u / PPM, c * MM);
        });
    }

    private static String way(double si, boolean rotary) {
        return rotary ? String.format(Locale.ROOT, "%.4f°", Math.toDegrees(si)) : String.format(Locale.ROOT, "%.3f mm", si * MM);
    }

    private static String words(Distribution distribution) {
        return switch (distribution) {
            case NORMAL -> "normal";
            case STUDENT -> "Student’s t";
            case RECTANGULAR -> "rectangular";
            case TRIANGULAR -> "triangular";
            case ARCSINE -> "arcsine";
        };
    }
}
