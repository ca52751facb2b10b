// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.runs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pitchstack.analysis.accuracy.RunEvaluation;
import pitchstack.analysis.accuracy.Words;
import pitchstack.core.accuracy.evaluation.OneWayFigures;
import pitchstack.core.accuracy.evaluation.Positioning;
import pitchstack.core.stack.AxisSpec;
import pitchstack.ui.views.SettingText;

/** How well the carriage comes back, in plain words. */
final class RepeatWords {
    private final RunEvaluation evaluation;
    private final AxisSpec axis;
    private final boolean rotary;

    RepeatWords(RunEvaluation evaluation, AxisSpec axis) {
        this.evaluation = evaluation;
        this.axis = axis;
        rotary = axis.scale().turn() > 0;
    }

    /** What counts first, then what is lacking. */
    String all() {
        List<String> lines = new ArrayList<>();
        evaluation.positioning().ifPresent(figures -> {
            figures.both().ifPresent(both -> {
                lines.add("At any one setting it comes back within a band of " + size(both.repeatabilityM())
                        + "; coming from below and from above differs by up to " + size(both.reversalM()) + ".");
                lines.add("Off the plan it stands within a band of " + size(both.accuracyM()) + oneWay(figures).map(size -> ", "
                        + size + " coming always from the same side").orElse("") + ".");
            });
            if (figures.both().isEmpty()) {
                oneWay(figures).ifPresent(size -> lines.add("Off the plan it stands within a band of " + size
                        + ", coming from one side."));
            }
        });
        evaluation.returns().ifPresent(returns -> lines.add(returns(returns)));
        lines.addAll(evaluation.remarks());
        return String.join("\n", lines);
    }

    private Optional<String> oneWay(Positioning figures) {
        return Stream.of(figures.up(), figures.down()).flatMap(Optional::stream).map(OneWayFigures::accuracyM)
                .min(Double::compare).map(this::size);
    }

    private String returns(RunEvaluation.Returns returns) {
        String where = SettingText.setting(axis, returns.setting());
        return "Back at " + where + ", " + returns.figures().count() + " times: the next return lies within ±"
                + size(returns.figures().nextWithinM()) + " of their mean (95 %)."
                + (returns.figures().drifts() ? " They wander off by " + size(Math.abs(returns.figures().slopeM()))
                        + " each time: let all come to one temperature, and measure again." : "");
    }

    /** A size in micrometres or seconds. */
    String size(double si) {
        return Words.size(si, rotary);
    }
}
