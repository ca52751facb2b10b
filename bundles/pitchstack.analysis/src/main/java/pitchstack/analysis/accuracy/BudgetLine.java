// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

import java.util.Optional;
import pitchstack.core.accuracy.budget.BudgetResult;
import pitchstack.core.accuracy.budget.Contribution;
import pitchstack.core.accuracy.budget.Distribution;
import pitchstack.core.accuracy.budget.Method;
import pitchstack.core.accuracy.budget.Persistence;
import pitchstack.core.accuracy.total.Cause;

/**
 * One line of a budget as window and command line show it.
 *
 * @param cause what it stands for
 * @param input what went in
 * @param share its part of the combined variance; all add up to 1, and one can be below 0 where it takes away from others
 */
public record BudgetLine(Optional<Cause> cause, Contribution input, double share) {
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
