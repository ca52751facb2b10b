// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.Setting;

/**
 * What moving each stage from where it stands costs, in one step and whatever the others do.
 *
 * @param axis the axis
 * @param from where its stages stand
 */
record StageEffort(AxisSpec axis, Setting from) {
    /** The effort of moving a stage to an index, in milliseconds. */
    long ms(int stage, int to) {
        EffortCost cost = axis.stages().get(stage).cost();
        long teeth = Math.abs((long) to - from.index(stage));
        return teeth == 0 ? 0 : cost.releaseMs() + cost.perToothMs() * teeth;
    }
}
