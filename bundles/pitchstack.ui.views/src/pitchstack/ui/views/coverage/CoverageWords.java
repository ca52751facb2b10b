// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.coverage;

import java.util.Locale;
import pitchstack.core.coverage.CoverageSummary;
import pitchstack.core.coverage.Reached;
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
        String within = " of " + scale.formatSize(summary.travel()) + " is reached within ±"
                + scale.formatSize(charted.coverage().tolerance());
        String over = worn == 0 ? ", all of it over clean teeth. "
                : ": " + percent(clean) + " over clean teeth, " + percent(worn) + " only over worn teeth. ";
        return percent(reached) + within + (reached == 0 ? ". " : over) + gaps(summary) + finest(charted);
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

    /** How a position is reached, in words. */
    static String reached(Reached reached) {
        return switch (reached) {
            case CLEAN -> "reached over clean teeth";
            case WORN -> "reached only over worn teeth";
            case NOT -> "not reached";
        };
    }
}
