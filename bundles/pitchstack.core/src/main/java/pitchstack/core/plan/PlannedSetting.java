// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.ArrayList;
import java.util.List;
import pitchstack.core.stack.Direction;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.Setting;

/**
 * A setting that can be moved to.
 *
 * @param setting one index a stage
 * @param position the position it gives, a count of the scale
 * @param error position minus target; on a rotary axis the short way round
 * @param effortMs the effort of the move from the starting setting, in milliseconds
 * @param wornStages the stages, lowest first, whose engaged teeth are marked worn
 * @param steps the steps of the move, in an order that keeps every limit after each, a stage more than once
 *     where the limits ask for it; empty where nothing moves
 */
public record PlannedSetting(Setting setting, long position, long error, long effortMs, List<Integer> wornStages,
        List<Step> steps) {
    /** Copies the lists. */
    public PlannedSetting {
        wornStages = List.copyOf(wornStages);
        steps = List.copyOf(steps);
    }

    /**
     * Which way each stage moved last, once the move is made.
     *
     * @param before which way each moved last before it
     */
    public Directions directionsAfter(Directions before) {
        List<Direction> after = new ArrayList<>(before.byStage());
        steps.forEach(step -> after.set(step.stage(), step.direction()));
        return new Directions(after);
    }
}
