// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.list;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pitchstack.core.plan.Leg;
import pitchstack.core.plan.SequenceAnswer.Planned;
import pitchstack.core.plan.SequenceRequest;
import pitchstack.core.plan.Stop;
import pitchstack.core.plan.StopOrder;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Setting;
import pitchstack.model.Target;

/** A planned list with the targets that its stops stand for. */
final class ListPlan {
    private final AxisSpec axis;
    private final SequenceRequest request;
    private final List<Target> targets;
    private final Planned planned;
    private final Map<Target, Integer> legs = new HashMap<>();

    /**
     * @param axis what was planned on
     * @param request what was asked
     * @param targets one for each stop of the request
     * @param planned what came of it
     */
    ListPlan(AxisSpec axis, SequenceRequest request, List<Target> targets, Planned planned) {
        this.axis = axis;
        this.request = request;
        this.targets = targets;
        this.planned = planned;
        for (int i = 0; i < planned.legs().size(); i++) {
            legs.put(targets.get(planned.legs().get(i).stop()), i);
        }
    }

    /** Whether this is what would come of asking again, as it is after setting a stop of it. */
    boolean answers(AxisSpec onAxis, SequenceRequest asked, List<Target> ofTargets) {
        return axis.equals(onAxis) && request.equals(asked) && targets.equals(ofTargets);
    }

    AxisSpec axis() {
        return axis;
    }

    SequenceRequest request() {
        return request;
    }

    Planned planned() {
        return planned;
    }

    /** What a target comes to; empty for one that was not planned. */
    Optional<Leg> leg(Target target) {
        return Optional.ofNullable(legs.get(target)).map(i -> planned.legs().get(i));
    }

    /** The stop that a leg goes to. */
    Stop stop(Leg leg) {
        return request.stops().get(leg.stop());
    }

    /** The place of a target among the moves, from 1; 0 where there is no move to it. */
    int turn(Target target) {
        Integer leg = legs.get(target);
        if (leg == null || planned.legs().get(leg).move().isEmpty()) {
            return 0;
        }
        return 1 + (int) planned.legs().subList(0, leg).stream().filter(before -> before.move().isPresent()).count();
    }

    /** The target set just before another; empty for the first, and where each is set from the start. */
    Optional<Target> before(Target target) {
        if (request.order() == StopOrder.EACH_FROM_START) {
            return Optional.empty();
        }
        for (int i = legs.getOrDefault(target, 0) - 1; i >= 0; i--) {
            if (planned.legs().get(i).move().isPresent()) {
                return Optional.of(targets.get(planned.legs().get(i).stop()));
            }
        }
        return Optional.empty();
    }

    /** Where the stages stand before the move to a target. */
    Setting from(Target target) {
        return before(target).flatMap(this::leg).flatMap(Leg::move).map(move -> move.setting()).orElse(request.from());
    }

    /** The next target that is moved to after another, or the first of all after {@code null}. */
    Optional<Target> after(Target target) {
        int from = target == null ? 0 : legs.getOrDefault(target, -1) + 1;
        return planned.legs().subList(from, planned.legs().size()).stream().filter(leg -> leg.move().isPresent())
                .findFirst().map(leg -> targets.get(leg.stop()));
    }

    /** The targets in the order of the moves. */
    List<Target> inTurn() {
        return planned.legs().stream().map(leg -> targets.get(leg.stop())).toList();
    }
}
