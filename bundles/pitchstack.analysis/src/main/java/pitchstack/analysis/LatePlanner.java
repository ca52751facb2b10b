// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis;

import pitchstack.core.plan.Planner;
import pitchstack.core.stack.AxisSpec;

/** The planner of a sound axis, prepared when it is first asked for, on the thread that asks. May be shared. */
final class LatePlanner {
    private final AxisSpec axis;
    private volatile Planner planner;

    LatePlanner(AxisSpec axis) {
        this.axis = axis;
    }

    boolean isPrepared() {
        return planner != null;
    }

    /** Who asks meanwhile waits for the same one. */
    synchronized Planner get() {
        if (planner == null) {
            planner = Planner.of(axis);
        }
        return planner;
    }
}
