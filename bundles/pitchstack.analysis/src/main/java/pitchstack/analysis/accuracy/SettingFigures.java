// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

import java.util.List;
import java.util.Optional;
import pitchstack.core.accuracy.budget.BudgetResult;
import pitchstack.core.stack.Setting;

/**
 * How well one setting is known. All sizes are metres, on a rotary axis radians.
 *
 * @param setting which
 * @param position where the carriage stands, in counts of the axis's scale
 * @param result the budget combined and expanded to 95 %
 */
public record SettingFigures(Setting setting, long position, BudgetResult result) {
    private static final double SEEN = 0.001;

    /** The contributions, largest share first. */
    public List<BudgetLine> lines() {
        return result.lines().stream().map(BudgetLine::of)
                .sorted((a, b) -> Double.compare(b.share(), a.share())).toList();
    }

    /** A sentence on shares that are not the square of a line's own u, where there are such. */
    public Optional<String> sharing() {
        double all = result.combined() * result.combined();
        boolean some = lines().stream()
                .anyMatch(line -> Math.abs(line.share() * all - line.uncertaintyM() * line.uncertaintyM()) > SEEN * all);
        boolean lessened = lines().stream().anyMatch(line -> line.share() < -SEEN);
        return some ? Optional.of("Some of these go together, such as rows of one print set-up: their shares count what they have"
                + " in common, not their own u alone." + (lessened ? " A share below 0 takes away from what the others add." : ""))
                : Optional.empty();
    }

    /** u, the combined standard uncertainty. */
    public double combinedM() {
        return result.combined();
    }

    /** U = k·u, which holds the position with 95 % probability. */
    public double expandedM() {
        return result.expanded();
    }
}
