// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.Setting;

/** Turns the way that was found into moves with their steps, and says of each stop that is left out why. */
final class LegWriter {
    private final Planner planner;
    private final SequenceRequest request;
    private final List<Leg> legs = new ArrayList<>();
    private Setting from;
    private Directions last;

    LegWriter(Planner planner, SequenceRequest request) {
        this.planner = planner;
        this.request = request;
        this.from = request.from();
        this.last = request.last();
    }

    /** Every stop in the given order. */
    List<Leg> inGivenOrder(Way way, Itinerary itinerary) {
        Deque<Way> visits = way.fromStart();
        for (int stop = 0; stop < request.stops().size(); stop++) {
            if (!visits.isEmpty() && visits.peek().stop() == stop) {
                visit(visits.remove(), itinerary);
            } else {
                leaveOut(stop);
            }
        }
        return legs;
    }

    /** Every stop in the order of the way, then those it leaves out. */
    List<Leg> inOrderOf(Way way, Itinerary itinerary) {
        boolean[] visited = new boolean[request.stops().size()];
        for (Way visit : way.fromStart()) {
            visited[visit.stop()] = true;
            visit(visit, itinerary);
        }
        for (int stop = 0; stop < visited.length; stop++) {
            if (!visited[stop]) {
                leaveOut(stop);
            }
        }
        return legs;
    }

    private void visit(Way visit, Itinerary itinerary) {
        Candidate to = itinerary.choices.get(visit.stop()).get(visit.choice());
        PlannedSetting move = planner.move(to, request.stops().get(visit.stop()).target(), from, last);
        legs.add(Leg.to(visit.stop(), move));
        from = move.setting();
        last = move.directionsAfter(last);
    }

    private void leaveOut(int stop) {
        legs.add(Leg.leftOut(stop, planner.plan(request(request, stop, from, last))));
    }

    /** What is asked of the planner for one stop by itself. */
    static PlanRequest request(SequenceRequest request, int stop, Setting from, Directions last) {
        Stop wanted = request.stops().get(stop);
        return new PlanRequest(wanted.target(), wanted.tolerance(), from, last, request.worn(), 0);
    }
}
