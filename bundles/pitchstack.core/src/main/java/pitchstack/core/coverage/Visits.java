// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.ArrayList;
import java.util.List;
import pitchstack.core.plan.Leg;
import pitchstack.core.plan.PlannedSetting;
import pitchstack.core.plan.SequenceAnswer;
import pitchstack.core.plan.Step;
import pitchstack.core.plan.StopOrder;
import pitchstack.core.stack.Setting;

/** The settings in which a planned list lets teeth come together, in order. */
public final class Visits {
    private Visits() { }

    /**
     * The settings of a plan. Where a move must be split to keep a limit, a stage is set down on the way too; the extra
     * tooth of an approach is not one. Stops that are left out are passed over; where each stop is planned from the
     * start, the stages go back there after each.
     *
     * @param planned the plan
     * @param order how the list was planned
     * @param from where the stages stood before
     */
    public static List<Setting> of(SequenceAnswer.Planned planned, StopOrder order, Setting from) {
        List<Setting> visits = new ArrayList<>();
        Setting at = from;
        for (Leg leg : planned.legs()) {
            if (leg.move().isPresent()) {
                add(visits, at, leg.move().get());
                at = leg.move().get().setting();
                if (order == StopOrder.EACH_FROM_START) {
                    visits.add(from);
                    at = from;
                }
            }
        }
        return visits;
    }

    private static void add(List<Setting> visits, Setting from, PlannedSetting move) {
        Setting on = from;
        for (Step step : move.steps()) {
            on = on.with(step.stage(), step.to());
            if (step.kind() == Step.Kind.PARTWAY) {
                visits.add(on);
            }
        }
        visits.add(move.setting());
    }
}
