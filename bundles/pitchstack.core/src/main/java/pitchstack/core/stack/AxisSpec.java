// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.stack;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import pitchstack.core.units.QuantityException;
import pitchstack.core.units.Scale;

/**
 * One direction of motion, from its base up to its carriage. All lengths are counts of the scale.
 *
 * @param name what people call it
 * @param scale the unit of the axis, linear or rotary
 * @param stages the stages, lowest first
 * @param datum the position at which the carriage stands when every index is 0
 * @param low the lowest position allowed by a stop, where there is one
 * @param high the highest position allowed by a stop, where there is one
 * @param shiftLimits limits over several stages, kept at every step of a move
 * @param approach in which direction every stage that moves must end its move
 * @param tolerance the tolerance of a target that names none, at least 0
 * @param wantedStep the step that the device is meant to reach everywhere, where one is stated
 */
public record AxisSpec(String name, Scale scale, List<StageSpec> stages, long datum, OptionalLong low,
        OptionalLong high, List<ShiftLimit> shiftLimits, Approach approach, long tolerance, OptionalLong wantedStep) {
    /** Copies the lists. */
    public AxisSpec {
        stages = List.copyOf(stages);
        shiftLimits = List.copyOf(shiftLimits);
    }

    /** An axis whose moves may end in either direction. */
    public AxisSpec(String name, Scale scale, List<StageSpec> stages, long datum, OptionalLong low, OptionalLong high,
            List<ShiftLimit> shiftLimits, long tolerance, OptionalLong wantedStep) {
        this(name, scale, stages, datum, low, high, shiftLimits, Approach.EITHER, tolerance, wantedStep);
    }

    /** The same axis with another stage in place of one, counted from the lowest, 0. */
    public AxisSpec withStage(int number, StageSpec stage) {
        List<StageSpec> changed = new ArrayList<>(stages);
        changed.set(number, stage);
        return new AxisSpec(name, scale, changed, datum, low, high, shiftLimits, approach, tolerance, wantedStep);
    }

    /**
     * The tolerance of a target, as a person wrote it.
     *
     * @param typed a length or an angle; blank for {@link #tolerance()}
     * @throws QuantityException if it cannot be read, or is below 0
     */
    public long tolerance(String typed) {
        long allowed = typed.isBlank() ? tolerance : scale.parse(typed);
        if (allowed < 0) {
            throw new QuantityException("A tolerance of " + typed.strip() + " is not allowed; it must not be negative.");
        }
        return allowed;
    }

    /**
     * The position of a setting, on a rotary axis within one turn.
     *
     * @param setting one index a stage, in range or not
     * @throws ArithmeticException if it does not fit a {@code long}
     */
    public long position(Setting setting) {
        long x = datum;
        for (int j = 0; j < stages.size(); j++) {
            x = Math.addExact(x, stages.get(j).offset(setting.index(j)));
        }
        return scale.wrap(x);
    }

    /**
     * The position a distance away from where a setting puts the carriage, whether or not the setting could be chosen:
     * the target of a relative move. It is exact, and on a rotary axis within one turn.
     *
     * @param setting where the stages stand
     * @param difference how far, positive towards higher positions
     * @throws ArithmeticException if it does not fit a {@code long}, which on a rotary axis it always does
     */
    public long positionFrom(Setting setting, long difference) {
        long way = scale.turn() == 0 ? difference : Math.floorMod(difference, scale.turn());
        return scale.wrap(Math.addExact(position(setting), way));
    }

    /** What the teeth engaged in a setting are fit for: the worst of its stages. */
    public Wear wearAt(Setting setting) {
        Wear worst = Wear.CLEAN;
        for (int j = 0; j < stages.size(); j++) {
            worst = worst.worse(stages.get(j).rows().wearAt(setting.index(j)));
        }
        return worst;
    }
}
