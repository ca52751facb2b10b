// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.List;
import pitchstack.core.stack.Setting;

/**
 * A setting that can be moved to.
 *
 * @param setting one index a stage
 * @param position the position it gives, a count of the scale
 * @param error position minus target; on a rotary axis the short way round
 * @param effortMs the effort of the move from the starting setting, in milliseconds
 * @param wornStages the stages, lowest first, whose engaged teeth are marked worn
 */
public record PlannedSetting(Setting setting, long position, long error, long effortMs, List<Integer> wornStages) {
    /** Copies the list. */
    public PlannedSetting {
        wornStages = List.copyOf(wornStages);
    }
}
