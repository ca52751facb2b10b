// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.coverage;

import java.util.List;
import java.util.Locale;
import pitchstack.core.coverage.CoverageChange;
import pitchstack.core.coverage.CoverageChange.Changed;
import pitchstack.core.coverage.CoverageSummary;
import pitchstack.core.coverage.Reached;
import pitchstack.core.coverage.Ways;
import pitchstack.core.units.Scale;

/**
 * Puts a coverage into sentences.
 *
 * @param scale the scale of its axis
 */
public record CoverageWords(Scale scale) {
    /** The figures in one line. */
    String figures(Charted charted) {
        CoverageSummary summary = charted.summary();
        double clean = summary.share(Reached.CLEAN);
        double worn = summary.share(Reached.WORN);
        // What is left of 1 may differ from the sum by a rounding, which must not turn 100 % into less.
        double reached = summary.not() == 0 ? 1 : clean + worn;
        String within = " of " + scale.formatWay(summary.travel()) + " is reached within ±"
                + scale.formatSize(charted.coverage().tolerance());
        String over = worn == 0 ? ", all of it over clean teeth. "
                : ": " + percent(clean) + " over clean teeth, " + percent(worn) + " only over worn teeth. ";
        return percent(reached) + within + (reached == 0 ? ". " : over) + gaps(summary) + finest(charted);
    }

    /** The figures beside what is supposed and what the selected mark costs, so short that the strips keep their room. */
    String compared(Charted charted, String selected) {
        if (charted.supposed().isEmpty() && charted.cost().isEmpty()) {
            return figures(charted);
        }
        return "Reached within ±" + scale.formatSize(charted.coverage().tolerance()) + ": " + reached(charted.summary())
                + charted.supposed().map(then -> " now, " + reached(then.summary()) + " as supposed in the view Wear, with "
                + amount(then.change().lost()) + " lost and " + amount(then.change().wornOnly())
                + " more only over worn teeth.").orElse(".")
                + charted.cost().map(cost -> " Selected " + selected + ": " + amount(cost.change().lost()) + " lost, "
                + amount(cost.change().wornOnly()) + " only over worn teeth.").orElse("");
    }

    private static String reached(CoverageSummary summary) {
        return percent(summary.not() == 0 ? 1 : summary.share(Reached.CLEAN) + summary.share(Reached.WORN));
    }

    private String amount(List<Changed> some) {
        return some.isEmpty() ? "nothing" : scale.formatSize(CoverageChange.size(some));
    }

    private String gaps(CoverageSummary summary) {
        return summary.largestGap().map(largest -> summary.gaps() == 1
                ? "1 gap of " + scale.formatSize(largest.size()) + ", from " + scale.format(largest.low()) + "."
                : summary.gaps() + " gaps, the largest " + scale.formatSize(largest.size()) + ", first at "
                        + scale.format(largest.low()) + ".").orElse("No gaps.");
    }

    private String finest(Charted charted) {
        return charted.finest().map(f -> " Finest step everywhere " + scale.formatSize(f.spacing()) + ".").orElse("");
    }

    /** With one decimal; only nothing is 0 %, and only all is 100 %. */
    public static String percent(double share) {
        if (share > 0 && share < 0.0005) {
            return "under 0.1 %";
        }
        if (share < 1 && share >= 0.9995) {
            return "over 99.9 %";
        }
        return String.format(Locale.ROOT, "%.1f %%", share * 100);
    }

    /** How many settings reach a position, as a further line; nothing where none does. */
    static String ways(Ways ways) {
        long all = ways.clean() + ways.worn();
        return all == 0 ? "" : "\nReached by " + all + (all == 1 ? " setting" : " settings")
                + (ways.worn() == 0 ? "." : (ways.clean() == 0 ? ", " : ", " + ways.worn() + " of them ") + "over worn teeth.");
    }

    /** How a position is reached, in words. */
    static String reached(Reached reached) {
        return switch (reached) {
            case CLEAN -> "reached over clean teeth";
            case WORN -> "reached only over worn teeth";
            case NOT -> "not reached";
        };
    }
}
