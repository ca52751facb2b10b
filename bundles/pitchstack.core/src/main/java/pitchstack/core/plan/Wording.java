// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import pitchstack.core.plan.Answer.Nearest;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Setting;
import pitchstack.core.units.Scale;

/** An answer in sentences for the person at the machine. */
public final class Wording {
    private final AxisSpec axis;
    private final Scale scale;

    /** @param axis the axis that was planned on */
    public Wording(AxisSpec axis) {
        this.axis = axis;
        this.scale = axis.scale();
    }

    /**
     * One sentence for each stage to move, lowest first: {@code Rack: 3 teeth forward, from 12 to 15.}
     *
     * @param from where the stages stand
     * @param to the setting to reach
     */
    public List<String> steps(Setting from, Setting to) {
        List<String> sentences = new ArrayList<>();
        for (Step step : Step.between(from, to)) {
            sentences.add(step(step));
        }
        return sentences;
    }

    /** One step: which stage, how many teeth, which way, the count before and after. */
    public String step(Step step) {
        int teeth = Math.abs(step.teeth());
        return axis.stages().get(step.stage()).name() + ": " + teeth + (teeth == 1 ? " tooth " : " teeth ")
                + (step.teeth() > 0 ? "forward" : "back") + ", from " + step.from() + " to " + step.to() + ".";
    }

    /** Where a planned setting puts the carriage, and how far off the target: {@code 37.630 in, 0.005 in above}. */
    public String position(PlannedSetting planned) {
        String error = planned.error() == 0 ? "exactly on the target"
                : scale.formatSize(planned.error()) + (planned.error() > 0 ? " above" : " below") + " the target";
        return scale.format(planned.position()) + ", " + error;
    }

    /** The effort: {@code 14 s}. */
    public String effort(PlannedSetting planned) {
        return seconds(planned.effortMs()) + " s";
    }

    /** Seconds as a decimal without needless zeros. */
    public static String seconds(long milliseconds) {
        return BigDecimal.valueOf(milliseconds, 3).stripTrailingZeros().toPlainString();
    }

    /** A warning that names the worn stages; empty where all engaged teeth are clean. */
    public Optional<String> worn(PlannedSetting planned) {
        if (planned.wornStages().isEmpty()) {
            return Optional.empty();
        }
        String names = planned.wornStages().stream().map(j -> "“" + axis.stages().get(j).name() + "”")
                .collect(Collectors.joining(" and "));
        return Optional.of("This stands on worn teeth of " + names + "; check the position before you rely on it.");
    }

    /**
     * Why a target is out of reach, with the nearest positions.
     *
     * @param target the wanted position
     * @param tolerance the tolerance that was asked
     * @param nearest the answer
     */
    public String reason(long target, long tolerance, Nearest nearest) {
        String wanted = scale.format(target);
        return switch (nearest.reason()) {
            case BEYOND_TRAVEL -> wanted + " is beyond the travel" + nearest.below().map(
                    b -> ": the highest position is " + scale.format(b.position()) + ".").or(() -> nearest.above().map(
                            a -> ": the lowest position is " + scale.format(a.position()) + ".")).orElse(".");
            case BETWEEN_STEPS -> wanted + between(nearest) + "; no setting comes within " + scale.formatSize(tolerance) + ".";
            case UNUSABLE_TEETH -> wanted + " could be set only over teeth marked as not to be used" + nearestOf(nearest) + ".";
        };
    }

    private String between(Nearest nearest) {
        if (nearest.below().isPresent() && nearest.above().isPresent()) {
            return " lies between " + scale.format(nearest.below().get().position()) + " and "
                    + scale.format(nearest.above().get().position());
        }
        return " lies between two steps" + nearestOf(nearest);
    }

    private String nearestOf(Nearest nearest) {
        return nearest.below().isEmpty() && nearest.above().isEmpty() ? "" : "; the nearest positions are "
                + List.of(nearest.below(), nearest.above()).stream().flatMap(Optional::stream)
                        .map(p -> scale.format(p.position())).collect(Collectors.joining(" and "));
    }
}
