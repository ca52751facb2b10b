// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.util.List;
import pitchstack.core.coverage.Seatings;
import pitchstack.core.coverage.Visits;
import pitchstack.core.plan.SequenceAnswer.Planned;
import pitchstack.core.plan.SequenceRequest;
import pitchstack.core.plan.StopOrder;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Setting;

/**
 * How often a planned list seats each tooth.
 *
 * @param axis the axis
 * @param order how the list was planned
 * @param reached how many stops are reached
 * @param leftOut how many are left out
 * @param seatings the counts
 */
record WearLog(AxisSpec axis, StopOrder order, int reached, int leftOut, Seatings seatings) {
    /** Counts the seatings of a plan. */
    static WearLog of(AxisSpec axis, SequenceRequest request, Planned planned) {
        List<Setting> visits = Visits.of(planned, request.order(), request.from());
        return new WearLog(axis, request.order(), planned.legs().size() - planned.leftOut(), planned.leftOut(),
                Seatings.ofMoves(axis, request.from(), visits));
    }
}
