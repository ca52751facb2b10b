// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import pitchstack.core.plan.Leg;
import pitchstack.core.plan.Planner;
import pitchstack.core.plan.Progress;
import pitchstack.core.plan.SequenceAnswer.Planned;
import pitchstack.core.plan.SequenceRequest;
import pitchstack.core.plan.Stop;
import pitchstack.core.stack.AxisSpec;

/**
 * What marked teeth change of a list that is planned in the given order.
 *
 * @param stops how many stops the list has
 * @param reached how many of them are reached now
 * @param lost those that are reached now and would not be
 * @param overWorn those that are reached over clean teeth now and would be over worn ones
 * @param nowMs the effort of those that are reached both times, now
 * @param supposedMs their effort with the marks
 */
record EffortChange(int stops, int reached, List<Stop> lost, List<Stop> overWorn, long nowMs, long supposedMs) {
    /**
     * Plans a list twice, and where the marks lose a stop once more without it, so that efforts of the same stops are
     * compared.
     *
     * @param now plans on the axis as it is
     * @param marked the axis with the marks
     * @param request the list
     * @throws BadInputException if it is too much to plan
     * @throws StoppedException if it was stopped
     */
    static EffortChange of(Planner now, AxisSpec marked, SequenceRequest request, Progress progress)
            throws BadInputException, StoppedException {
        Planner supposed = Planner.of(marked);
        Planned before = Listed.plan(now, request, progress);
        Planned after = Listed.plan(supposed, request, progress);
        Set<Integer> both = stops(before, leg -> leg.move().isPresent());
        Set<Integer> lost = new TreeSet<>(both);
        lost.removeAll(stops(after, leg -> leg.move().isPresent()));
        both.removeAll(lost);
        Set<Integer> overWorn = stops(after, EffortChange::isOverWorn);
        overWorn.removeAll(stops(before, EffortChange::isOverWorn));
        overWorn.retainAll(both);
        SequenceRequest kept = new SequenceRequest(of(request, both), request.from(), request.last(), request.worn(),
                request.order(), request.memoryBytes());
        return new EffortChange(request.stops().size(), both.size() + lost.size(), of(request, lost), of(request, overWorn),
                Listed.plan(now, kept, progress).effortMs(), Listed.plan(supposed, kept, progress).effortMs());
    }

    private static boolean isOverWorn(Leg leg) {
        return leg.move().isPresent() && !leg.move().get().wornStages().isEmpty();
    }

    private static Set<Integer> stops(Planned planned, Predicate<Leg> which) {
        return planned.legs().stream().filter(which).map(Leg::stop).collect(Collectors.toCollection(TreeSet::new));
    }

    private static List<Stop> of(SequenceRequest request, Set<Integer> numbers) {
        return numbers.stream().map(request.stops()::get).toList();
    }
}
