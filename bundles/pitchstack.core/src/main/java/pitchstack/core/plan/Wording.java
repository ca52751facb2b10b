// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import pitchstack.core.plan.Answer.Nearest;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Direction;
import pitchstack.core.stack.Setting;
import pitchstack.core.units.Scale;
import pitchstack.core.units.TrueMinus;

/** An answer in sentences for the person at the machine; negative numbers have a true minus. */
public final class Wording {
    private static final long MILLISECONDS_IN_MINUTE = 60_000;
    private static final int MINUTES_IN_HOUR = 60;

    private final AxisSpec axis;
    private final Scale scale;

    /** @param axis the axis that was planned on */
    public Wording(AxisSpec axis) {
        this.axis = axis;
        this.scale = axis.scale();
    }

    /** One sentence for each step of a move, in order: {@code Rack: 3 teeth forward, from 12 to 15.} */
    public List<String> steps(PlannedSetting planned) {
        return planned.steps().stream().map(this::step).toList();
    }

    /**
     * One step: which stage, how many teeth, which way, the count before and after, and what for where the stage goes
     * one tooth further and comes back.
     */
    public String step(Step step) {
        long teeth = Math.abs((long) step.to() - step.from());
        String counts = TrueMinus.in(", from " + step.from() + " to " + step.to());
        return name(step.stage()) + ": " + teeth + (teeth == 1 ? " tooth " : " teeth ")
                + way(step.direction()) + counts + switch (step.kind()) {
                    case DIRECT -> ".";
                    case PARTWAY -> ", as far as the limits allow for now.";
                    case FURTHER -> ", one tooth further than its place.";
                    case RETURN -> ", so that it ends moving " + way(step.direction()) + ".";
                };
    }

    private static String way(Direction direction) {
        return direction == Direction.FORWARD ? "forward" : "back";
    }

    /** Where a setting has its stages: {@code Rack 12; Adapter −3; Carriage 3}. */
    public String setting(Setting setting) {
        StringBuilder text = new StringBuilder();
        for (int j = 0; j < setting.size(); j++) {
            text.append(j == 0 ? "" : "; ").append(name(j)).append(TrueMinus.in(" " + setting.index(j)));
        }
        return text.toString();
    }

    /** The name of a stage, or its number counted from 1 where it has none. */
    private String name(int stage) {
        String name = axis.stages().get(stage).name();
        return name.isBlank() ? "Stage " + (stage + 1) : name;
    }

    /** Where a planned setting puts the carriage, and how far off: {@code 37.630 in, 0.005 in above the target}. */
    public String position(PlannedSetting planned) {
        String error = planned.error() == 0 ? "exactly on the target"
                : size(scale, planned.error()) + (planned.error() > 0 ? " above" : " below") + " the target";
        return TrueMinus.in(scale.format(planned.position())) + ", " + error;
    }

    /** The size of a difference; one that would be rounded away is not called nothing. */
    static String size(Scale scale, long difference) {
        String size = scale.formatSize(difference);
        return difference != 0 && size.equals(scale.formatSize(0)) ? "less than " + scale.smallestSize() : size;
    }

    /** The effort: {@code 14 s}, {@code 2 min 40 s}, {@code 1 h 3 min}. */
    public String effort(PlannedSetting planned) {
        return effort(planned.effortMs());
    }

    /** An effort in milliseconds, likewise. */
    public static String effort(long milliseconds) {
        long minutes = milliseconds / MILLISECONDS_IN_MINUTE;
        long rest = milliseconds % MILLISECONDS_IN_MINUTE;
        String words = part(minutes / MINUTES_IN_HOUR, " h ") + part(minutes % MINUTES_IN_HOUR, " min ")
                + (rest == 0 ? "" : seconds(rest) + " s");
        return words.isEmpty() ? "0 s" : words.strip();
    }

    private static String part(long count, String unit) {
        return count == 0 ? "" : count + unit;
    }

    /** Seconds as a decimal without needless zeros. */
    public static String seconds(long milliseconds) {
        return BigDecimal.valueOf(milliseconds, 3).stripTrailingZeros().toPlainString();
    }

    /** A warning that names the worn stages; empty where all engaged teeth are clean. */
    public Optional<String> worn(PlannedSetting planned) {
        List<String> names = planned.wornStages().stream().map(j -> "“" + name(j) + "”").toList();
        if (names.isEmpty()) {
            return Optional.empty();
        }
        int last = names.size() - 1;
        String all = last == 0 ? names.get(0) : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
        return Optional.of("This stands on worn teeth of " + all + "; check the position before you rely on it.");
    }

    /**
     * Why a target is out of reach, with the nearest positions: one sentence.
     *
     * @param target the wanted position
     * @param tolerance the tolerance that was asked
     * @param nearest the answer
     */
    public String reason(long target, long tolerance, Nearest nearest) {
        return TrueMinus.in(new ReasonWording(axis, target, tolerance, nearest).sentence());
    }
}
