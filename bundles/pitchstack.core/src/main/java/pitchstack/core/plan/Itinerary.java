// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.ArrayList;
import java.util.List;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.Setting;

/**
 * What a list of stops comes to before an order or settings are chosen: the settings of each stop, and how a way goes
 * on from one stop to the next. One object serves one thread.
 */
final class Itinerary {
    /** A way with its place in a list, about. */
    static final long BYTES_OF_A_WAY = 96;

    final SequenceRequest request;
    final Progress progress;
    final Planner planner;
    /** By stop; empty for a stop that no setting comes near enough to. */
    final List<List<Candidate>> choices;
    /** Whether there is a limit or a rule for which some move might not be made, so that stops may be left out. */
    final boolean mayStrand;
    private final Turns turns;
    private final Memory memory;

    Itinerary(Planner planner, SequenceRequest request, Progress progress) {
        this.planner = planner;
        this.request = request;
        this.progress = progress;
        this.memory = new Memory(request);
        this.mayStrand = planner.prepared().mayStrand();
        this.turns = new Turns(planner.prepared().tables);
        this.choices = new StopSettings(planner, request, memory, mayStrand).list(progress);
    }

    /** More than all stops on worn teeth can come to. */
    long leftOutFault() {
        return request.stops().size() + 1L;
    }

    /** The stops that some setting comes near enough to, in the given order. */
    int[] reachable() {
        List<Integer> stops = new ArrayList<>();
        for (int stop = 0; stop < choices.size(); stop++) {
            if (!choices.get(stop).isEmpty()) {
                stops.add(stop);
            }
        }
        return stops.stream().mapToInt(Integer::intValue).toArray();
    }

    /** The way that has not left the start. */
    Way start() {
        return new Way(null, -1, 0, turns.code(request.last()), 0, 0, 0, 0);
    }

    Moves moves(Way way) {
        boolean atStart = way.stop() < 0;
        Setting from = atStart ? request.from() : Setting.of(choices.get(way.stop()).get(way.choice()).indices());
        Directions last = atStart ? request.last() : turns.directions(way.directions());
        return Moves.from(planner.prepared(), from, last);
    }

    /** The moves from a setting of a stop, or of −1 from the start, at the least: after whatever direction costs nothing. */
    Moves movesFromChoice(int stop, int choice) {
        Setting from = stop < 0 ? request.from() : Setting.of(choices.get(stop).get(choice).indices());
        return Moves.from(planner.prepared(), from, stop < 0 ? request.last() : Directions.unknown(from.size()));
    }

    Front front(int stop) {
        return new Front(choices.get(stop).size(), turns);
    }

    /**
     * Enters what one way comes to at the settings of a stop.
     *
     * @param way a way to another stop
     * @param stop the stop to go on to
     * @param front the best ways to it
     * @param limit what is not to be exceeded
     */
    void extend(Way way, int stop, Front front, Limit limit) {
        endIfCancelled();
        Moves moves = moves(way);
        List<Candidate> settings = choices.get(stop);
        for (int c = 0; c < settings.size(); c++) {
            Candidate to = settings.get(c);
            long effort = way.effort() + moves.effort(to.indices());
            long faults = way.faults() + fault(to);
            int directions = turns.codeAfter(moves, to.indices());
            boolean within = faults < limit.faults() || faults == limit.faults() && effort <= limit.effort();
            long extra = within && front.wants(c, directions, faults, effort) ? moves.extraEffort(to.indices(), Long.MAX_VALUE)
                    : -1;
            if (extra >= 0 && front.offer(new Way(way, stop, c, directions, faults, effort + extra,
                    Saturated.add(way.error(), to.distance()), way.worn() + to.worn()))) {
                memory.take(BYTES_OF_A_WAY);
            }
        }
    }

    private long fault(Candidate to) {
        return request.worn() == WornPolicy.AVOID && to.worn() > 0 ? 1 : 0;
    }

    /** What memory a search takes beyond this is given back when it ends. */
    long memoryTaken() {
        return memory.taken();
    }

    /** Gives back what was taken since. */
    void giveBackTo(long taken) {
        memory.giveBackTo(taken);
    }

    /** Ends the planning for want of memory, in a sentence that names how much there is. */
    void refuse(String what, String wayOut) {
        memory.refuse(what, wayOut);
    }

    void endIfCancelled() {
        if (progress.isCancelled()) {
            throw new EndedEarly(new SequenceAnswer.Cancelled());
        }
    }
}
