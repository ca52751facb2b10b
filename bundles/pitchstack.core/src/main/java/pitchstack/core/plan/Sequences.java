// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.StageSpec;

/**
 * Plans lists of stops. A plan leaves out as few stops as it can; among such plans it stands on worn teeth that are to
 * be avoided at as few stops as it can; among those it costs the least effort, and then has the smallest errors.
 */
public final class Sequences {
    private final Planner planner;
    private final SequenceRequest request;
    private final Progress progress;
    private final double mostExactWork;

    private Sequences(Planner planner, SequenceRequest request, Progress progress, double mostExactWork) {
        this.mostExactWork = mostExactWork;
        this.planner = planner;
        this.request = request;
        this.progress = progress;
    }

    /**
     * Plans a list.
     *
     * @param planner the planner of the axis
     * @param request the list, and how to plan it
     * @param progress is told how far the work is, and asked whether to go on
     * @throws IllegalArgumentException if the starting setting has another number of indices than the axis has stages
     */
    public static SequenceAnswer plan(Planner planner, SequenceRequest request, Progress progress) {
        return plan(planner, request, progress, FreeOrder.MOST_EXACT_WORK);
    }

    /** The same with a free order planned exactly only where that takes no more work than given. */
    static SequenceAnswer plan(Planner planner, SequenceRequest request, Progress progress, double mostExactWork) {
        try {
            return new Sequences(planner, request, progress, mostExactWork).plan();
        } catch (EndedEarly e) {
            return e.answer;
        }
    }

    private SequenceAnswer plan() {
        refuseSumsThatDoNotFit();
        return switch (request.order()) {
            case EACH_FROM_START -> eachFromStart();
            case ONE_BY_ONE -> oneByOne();
            case GIVEN -> given();
            case FREE -> free();
        };
    }

    private void refuseSumsThatDoNotFit() {
        AxisSpec axis = planner.axis();
        try {
            long first = 0;
            long others = 0;
            for (StageSpec stage : axis.stages()) {
                first = Math.addExact(first, Soundness.farthestMove(stage.cost()));
                others = Math.addExact(others, farthestMove(stage));
            }
            long each = request.order() == StopOrder.EACH_FROM_START ? first : others;
            Math.addExact(first, Math.multiplyExact(each, request.stops().size() + 1L));
        } catch (ArithmeticException e) {
            throw new EndedEarly(new SequenceAnswer.Refused("The efforts of " + request.stops().size() + " stops on axis “"
                    + axis.name() + "” are too large to be added up exactly; correct the costs of its stages."));
        }
    }

    /** The effort of the farthest move within the rows: over all indices, one further and back, turning round twice. */
    private static long farthestMove(StageSpec stage) {
        EffortCost cost = stage.cost();
        return Math.addExact(Math.addExact(Math.multiplyExact(cost.releaseMs(), (long) MoveSplitter.MOST_STEPS),
                Math.multiplyExact(2L, cost.reversalMs())),
                Math.multiplyExact(cost.perToothMs(), stage.rows().indices().count() + 2L));
    }

    private SequenceAnswer.Planned eachFromStart() {
        List<Leg> legs = new ArrayList<>();
        Optional<TableQuery> table = TableQuery.pays(planner, request.stops().size())
                ? Optional.of(planner.table(request.from(), request.last(), request.worn())) : Optional.empty();
        for (int stop = 0; stop < request.stops().size(); stop++) {
            tell(stop);
            Stop wanted = request.stops().get(stop);
            legs.add(leg(stop, table.isPresent() ? table.get().answer(wanted.target(), wanted.tolerance())
                    : planner.plan(LegWriter.request(request, stop, request.from(), request.last()))));
        }
        return planned(legs, Optional.empty(), OptionalLong.empty());
    }

    private SequenceAnswer.Planned oneByOne() {
        List<Leg> legs = new ArrayList<>();
        Setting from = request.from();
        Directions last = request.last();
        for (int stop = 0; stop < request.stops().size(); stop++) {
            tell(stop);
            Leg leg = leg(stop, planner.plan(LegWriter.request(request, stop, from, last)));
            legs.add(leg);
            if (leg.move().isPresent()) {
                from = leg.move().get().setting();
                last = leg.move().get().directionsAfter(last);
            }
        }
        return planned(legs, Optional.empty(), OptionalLong.empty());
    }

    private void tell(int stop) {
        progress.done(stop, request.stops().size());
        if (progress.isCancelled()) {
            throw new EndedEarly(new SequenceAnswer.Cancelled());
        }
    }

    private SequenceAnswer.Planned given() {
        SequenceAnswer.Planned oneByOne = oneByOne();
        Itinerary itinerary = new Itinerary(planner, request, progress);
        int[] order = itinerary.reachable();
        Way best = new OrderedSearch(itinerary).best(order, limit(oneByOne, order));
        List<Leg> legs = new LegWriter(planner, request).inGivenOrder(best, itinerary);
        return planned(legs, Optional.of(oneByOne), OptionalLong.of(best.effort()));
    }

    private SequenceAnswer.Planned free() {
        SequenceAnswer.Planned oneByOne = oneByOne();
        Itinerary itinerary = new Itinerary(planner, request, progress);
        FreeOrder.Found found = new FreeOrder(itinerary, mostExactWork).find(limit(oneByOne, itinerary.reachable()));
        List<Leg> legs = new LegWriter(planner, request).inOrderOf(found.best(), itinerary);
        return planned(legs, Optional.of(oneByOne), found.leastMs());
    }

    /** What planning one by one comes to over the stops that have settings at all. */
    private Limit limit(SequenceAnswer.Planned oneByOne, int[] reachable) {
        long worn = 0;
        long visited = 0;
        for (Leg leg : oneByOne.legs()) {
            if (leg.move().isPresent()) {
                visited++;
                worn += request.worn() == WornPolicy.AVOID && !leg.move().get().wornStages().isEmpty() ? 1 : 0;
            }
        }
        return new Limit((reachable.length - visited) * (request.stops().size() + 1L) + worn, oneByOne.effortMs());
    }

    private static Leg leg(int stop, Answer answer) {
        return answer instanceof Answer.Reached reached ? Leg.to(stop, reached.best()) : Leg.leftOut(stop, answer);
    }

    private static SequenceAnswer.Planned planned(List<Leg> legs, Optional<SequenceAnswer.Planned> oneByOne,
            OptionalLong leastMs) {
        long effort = legs.stream().flatMap(leg -> leg.move().stream()).mapToLong(PlannedSetting::effortMs).sum();
        return new SequenceAnswer.Planned(legs, effort, oneByOne, leastMs);
    }
}
