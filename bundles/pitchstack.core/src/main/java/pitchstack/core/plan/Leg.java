// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.Optional;

/**
 * One stop of a planned list.
 *
 * @param stop which stop of the list, counted from 0
 * @param move the move to it; empty where it is left out
 * @param nearest where it is left out because it cannot be reached from where the stages then stand, the nearest
 *     positions and the reason; empty where it could be, but only at the price of leaving out another stop
 */
public record Leg(int stop, Optional<PlannedSetting> move, Optional<Answer.Nearest> nearest) {
    /** A stop that is moved to. */
    static Leg to(int stop, PlannedSetting move) {
        return new Leg(stop, Optional.of(move), Optional.empty());
    }

    /** A stop that is left out. */
    static Leg leftOut(int stop, Answer answer) {
        return new Leg(stop, Optional.empty(),
                answer instanceof Answer.Nearest nearest ? Optional.of(nearest) : Optional.empty());
    }
}
