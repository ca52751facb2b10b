// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Direction;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.Wear;

/**
 * The best plan of a short list, found by trying every setting of every stop, every way of leaving stops out and, where
 * the order is free, every order.
 */
final class SequenceBruteForce {
    /** What a plan comes to; less is better, the first that differs decides. */
    record Total(int leftOut, int avoidedWorn, long effort, long error) implements Comparable<Total> {
        @Override
        public int compareTo(Total o) {
            int first = Integer.compare(leftOut, o.leftOut);
            int second = first != 0 ? first : Integer.compare(avoidedWorn, o.avoidedWorn);
            int third = second != 0 ? second : Long.compare(effort, o.effort);
            return third != 0 ? third : Long.compare(error, o.error);
        }
    }

    private final AxisSpec axis;
    private final SequenceRequest request;
    private final BruteForce force;
    private final List<List<int[]>> choices = new ArrayList<>();
    private final Map<List<Object>, BruteForceMoves> moves = new HashMap<>();
    private final boolean free;
    private Total best;

    SequenceBruteForce(AxisSpec axis, SequenceRequest request) {
        this.axis = axis;
        this.request = request;
        this.force = new BruteForce(axis);
        this.free = request.order() == StopOrder.FREE;
        Wear worst = request.worn() == WornPolicy.NEVER ? Wear.CLEAN : Wear.WORN;
        for (Stop stop : request.stops()) {
            choices.add(force.within(stop.target(), stop.tolerance(), worst));
        }
    }

    /** How many lists of settings there are, about. */
    double size() {
        double size = 1;
        for (int i = 0; i < choices.size(); i++) {
            size *= (choices.get(i).size() + 1.0) * (free ? i + 1 : 1);
        }
        return size;
    }

    Total best() {
        best = new Total(request.stops().size(), 0, 0, 0);
        visit(request.from(), request.last(), new boolean[request.stops().size()], 0,
                new Total(request.stops().size(), 0, 0, 0));
        return best;
    }

    /** What the moves of a plan come to, each counted along its steps. */
    Total total(List<Leg> legs) {
        Total total = new Total(legs.size(), 0, 0, 0);
        Setting from = request.from();
        Directions last = request.last();
        for (Leg leg : legs) {
            if (leg.move().isPresent()) {
                int[] to = leg.move().get().setting().toArray();
                BruteForceMoves start = moves(from, last);
                if (!start.steps(to).equals(java.util.Optional.of(leg.move().get().steps()))) {
                    throw new AssertionError("not the steps of " + leg);
                }
                total = after(total, leg.stop(), to, start.effort(to));
                last = after(last, from, to);
                from = leg.move().get().setting();
            }
        }
        return total;
    }

    private void visit(Setting from, Directions last, boolean[] visited, int next, Total total) {
        best = total.compareTo(best) < 0 ? total : best;
        for (int stop = free ? 0 : next; stop < visited.length; stop++) {
            if (!visited[stop]) {
                visited[stop] = true;
                for (int[] to : choices.get(stop)) {
                    BruteForceMoves start = moves(from, last);
                    if (start.steps(to).isPresent()) {
                        visit(Setting.of(to), after(last, from, to), visited, stop + 1,
                                after(total, stop, to, start.effort(to)));
                    }
                }
                visited[stop] = false;
            }
        }
    }

    private BruteForceMoves moves(Setting from, Directions last) {
        return moves.computeIfAbsent(List.of(from, last), key -> new BruteForceMoves(axis, from, last));
    }

    private Total after(Total before, int stop, int[] to, long effort) {
        boolean avoided = request.worn() == WornPolicy.AVOID && force.worst(to) == Wear.WORN;
        long error = force.distance(to, request.stops().get(stop).target());
        return new Total(before.leftOut - 1, before.avoidedWorn + (avoided ? 1 : 0), before.effort + effort,
                Saturated.add(before.error, error));
    }

    private Directions after(Directions last, Setting from, int[] to) {
        List<Direction> after = new ArrayList<>();
        for (int j = 0; j < to.length; j++) {
            boolean forward = switch (axis.approach()) {
                case FORWARD -> true;
                case BACK -> false;
                case EITHER -> to[j] > from.index(j);
            };
            after.add(to[j] == from.index(j) ? last.of(j) : forward ? Direction.FORWARD : Direction.BACK);
        }
        return new Directions(after);
    }
}
