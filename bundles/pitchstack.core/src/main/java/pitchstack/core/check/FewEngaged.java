// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.Locale;
import java.util.Optional;
import pitchstack.core.plan.Soundness;
import pitchstack.core.stack.StageSpec;

/**
 * Few engaged teeth average their errors badly. With N teeth bearing, the scatter of a setting is 1/√N of one tooth's
 * (elastic averaging; MIT Precision Engineering Research Group, "Coupling Types – Elastic Averaging").
 */
public final class FewEngaged implements StageCheck {
    /** The fewest teeth that halve the scatter of a single one: 1/√4. */
    public static final int FEWEST = 4;

    @Override
    public Optional<Finding> at(Subject subject, StageSpec stage, int j) {
        int least = Math.max(1, stage.rows().minimumEngaged());
        if (least >= FEWEST || Soundness.rowProblem(stage, j).isPresent()) {
            return Optional.empty();
        }
        String percent = String.format(Locale.ROOT, "%.0f %%", 100 / Math.sqrt(least));
        return Optional.of(new Finding("few-engaged", Severity.WARNING, Place.stage(j), count(least), count(FEWEST),
                "Stage " + stage.title(j) + " may stand on " + count(least) + ", which leaves " + percent
                        + " of one tooth's scatter; keep at least " + FEWEST + " engaged to halve it."));
    }

    private static String count(int teeth) {
        return teeth == 1 ? "1 tooth" : teeth + " teeth";
    }
}
