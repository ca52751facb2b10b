// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.List;
import java.util.Optional;

/** What the planner found. */
public sealed interface Answer {
    /**
     * The target is reached.
     *
     * @param best the setting of least effort; ties go to the smaller error, then to fewer worn stages, then to the
     *     position below the target, then to the smaller indices in stage order
     * @param alternatives the next settings within tolerance in the same order, as many as were asked for and exist
     */
    record Reached(PlannedSetting best, List<PlannedSetting> alternatives) implements Answer {
        /** Copies the list. */
        public Reached {
            alternatives = List.copyOf(alternatives);
        }
    }

    /**
     * No setting comes within tolerance.
     *
     * @param below the nearest reachable position below the target, by the setting of least effort there
     * @param above the nearest above
     * @param reason why the target itself is out
     */
    record Nearest(Optional<PlannedSetting> below, Optional<PlannedSetting> above, Reason reason) implements Answer { }
}
