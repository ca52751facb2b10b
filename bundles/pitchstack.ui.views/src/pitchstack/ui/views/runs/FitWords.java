// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.runs;

import java.util.ArrayList;
import java.util.List;
import pitchstack.analysis.accuracy.AxisFit;
import pitchstack.analysis.accuracy.Words;
import pitchstack.core.accuracy.fit.Estimate;
import pitchstack.core.accuracy.fit.PitchFit;
import pitchstack.export.plot.Figures;

/** What a fit says, in plain words. */
final class FitWords {
    private static final double STRANGE = 0.01;

    private final AxisFit fit;
    private final PitchFit found;
    private final boolean rotary;

    /** @param fit one that came off */
    FitWords(AxisFit fit) {
        this.fit = fit;
        found = fit.fit().orElseThrow();
        rotary = fit.run().spec().scale().turn() > 0;
    }

    /** What is to be looked at before the pitches are believed. */
    String all() {
        List<String> lines = new ArrayList<>();
        found.reversalM().ifPresent(reversal -> lines.add(reversal(reversal)));
        int outliers = found.outliers().size();
        if (outliers > 0) {
            lines.add((outliers == 1 ? "1 reading is" : outliers + " readings are") + " farther off than chance explains (marked !"
                    + " in the table): look for a miscounted tooth or a slip of the pen, mend or delete, and see again.");
        }
        if (found.chance() < STRANGE) {
            lines.add("The readings scatter " + Figures.of(found.scatterRatio(), 2) + " times as much as the instrument's own"
                    + " uncertainty explains; that is how the rows seat, and it is counted.");
        }
        return String.join("\n", lines);
    }

    /** {@code 0.080 % long, ±0.020 %}, or that it may be as drawn. */
    static String pitch(Estimate correction) {
        double within = correction.within();
        String size = correction.isSignificant()
                ? Percents.size(correction.value(), within) + (correction.value() > 0 ? " long" : " short")
                : "as drawn, " + Percents.signed(correction.value(), within);
        return size + ", ±" + Percents.within(within);
    }

    private String reversal(Estimate reversal) {
        String size = Words.size(Math.abs(reversal.value()), rotary) + ", ±" + Words.size(reversal.within(), rotary);
        return reversal.isSignificant() ? "Coming from below and from above differ by " + size
                + ": always end a move in the same direction." : "From which side one comes makes no difference to be seen ("
                + size + ").";
    }
}
