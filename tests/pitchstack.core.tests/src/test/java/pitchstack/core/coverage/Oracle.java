// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.TreeSet;
import java.util.function.LongPredicate;
import java.util.stream.IntStream;
import pitchstack.core.plan.BruteForce;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.ShiftLimit;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.Wear;

/** What a coverage promises, by listing every setting. Slow and plain on purpose; shares no code but the records. */
final class Oracle {
    private final AxisSpec axis;
    private final long turn;
    /** The places of all settings that rows, stops and limits allow, by the worst teeth of the setting. */
    private final List<List<Long>> places = List.of(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());

    /** The settings in the same order. */
    private final List<List<int[]>> settings = List.of(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    private final List<Long> usable = new ArrayList<>();
    private final List<Long> all = new ArrayList<>();

    Oracle(AxisSpec axis) {
        this.axis = axis;
        this.turn = axis.scale().turn();
        list(new int[axis.stages().size()], 0, Wear.CLEAN);
        usable.addAll(places.get(0));
        usable.addAll(places.get(1));
        all.addAll(usable);
        all.addAll(places.get(2));
    }

    private void list(int[] indices, int stage, Wear worst) {
        if (stage == indices.length) {
            long place = axis.datum();
            for (int j = 0; j < indices.length; j++) {
                place += offset(axis.stages().get(j), indices[j]);
            }
            if (limitsHold(indices) && stopsAllow(place)) {
                places.get(worst.ordinal()).add(place);
                settings.get(worst.ordinal()).add(indices.clone());
            }
            return;
        }
        StageSpec spec = axis.stages().get(stage);
        for (int n : BruteForce.indicesOf(spec.rows())) {
            indices[stage] = n;
            Wear wear = BruteForce.wear(spec.rows(), n);
            list(indices, stage + 1, wear.ordinal() > worst.ordinal() ? wear : worst);
        }
    }

    private static long offset(StageSpec stage, int index) {
        return stage.pitch() * index + stage.errors().at(index);
    }

    private boolean limitsHold(int[] indices) {
        for (ShiftLimit limit : axis.shiftLimits()) {
            long sum = 0;
            for (int j = limit.lowest(); j <= limit.highest(); j++) {
                sum += offset(axis.stages().get(j), indices[j]);
            }
            if (Math.abs(sum) > limit.limit()) {
                return false;
            }
        }
        return true;
    }

    private boolean stopsAllow(long place) {
        if (turn == 0) {
            return place >= axis.low().orElse(Long.MIN_VALUE) && place <= axis.high().orElse(Long.MAX_VALUE);
        }
        long from = axis.low().orElse(0);
        long to = axis.high().orElse(turn - 1);
        while (to < from) {
            to += turn;
        }
        long position = Math.floorMod(place, turn);
        for (long lap = position - 9 * turn; lap <= position + 9 * turn; lap += turn) {
            if (from <= lap && lap <= to) {
                return true;
            }
        }
        return false;
    }

    List<Long> clean() {
        return places.get(0);
    }

    List<Long> usable() {
        return usable;
    }

    List<Long> all() {
        return all;
    }

    private long distance(long place, long position) {
        long away = Math.abs(place - position);
        return turn == 0 ? away : Math.min(away % turn, turn - away % turn);
    }

    long count(List<Long> some, long position, long tolerance) {
        return some.stream().filter(place -> distance(place, position) <= tolerance).count();
    }

    Reached at(long position, long tolerance) {
        if (!inTravel(position)) {
            return Reached.NOT;
        }
        LongPredicate near = place -> distance(place, position) <= tolerance;
        return clean().stream().anyMatch(near::test) ? Reached.CLEAN
                : usable.stream().anyMatch(near::test) ? Reached.WORN : Reached.NOT;
    }

    /** The least effort of a clean setting within the tolerance, else of a worn one. */
    OptionalLong leastEffort(long position, long tolerance, Setting from) {
        for (int kind = 0; kind < 2; kind++) {
            List<Long> some = places.get(kind);
            List<int[]> theirs = settings.get(kind);
            OptionalLong least = IntStream.range(0, some.size())
                    .filter(i -> distance(some.get(i), position) <= tolerance)
                    .mapToLong(i -> effort(from, theirs.get(i))).min();
            if (least.isPresent()) {
                return least;
            }
        }
        return OptionalLong.empty();
    }

    private long effort(Setting from, int[] to) {
        long effort = 0;
        for (int j = 0; j < to.length; j++) {
            EffortCost cost = axis.stages().get(j).cost();
            effort += to[j] == from.index(j) ? 0
                    : cost.releaseMs() + cost.perToothMs() * Math.abs((long) to[j] - from.index(j));
        }
        return effort;
    }

    boolean inTravel(long position) {
        if (all.isEmpty() || turn > 0 && (position < 0 || position >= turn)) {
            return false;
        }
        if (turn == 0) {
            return all.stream().anyMatch(place -> place <= position)
                    && all.stream().anyMatch(place -> place >= position);
        }
        return stopsAllow(position) && rowsReach(position);
    }

    /** Whether some lap of the position lies between the ends of all rows and of any limit over all stages. */
    private boolean rowsReach(long position) {
        long low = 0;
        long high = 0;
        for (StageSpec stage : axis.stages()) {
            List<Integer> indices = BruteForce.indicesOf(stage.rows());
            low += offset(stage, indices.get(0));
            high += offset(stage, indices.get(indices.size() - 1));
        }
        for (ShiftLimit limit : axis.shiftLimits()) {
            if (limit.lowest() == 0 && limit.highest() == axis.stages().size() - 1) {
                low = Math.max(low, -limit.limit());
                high = Math.min(high, limit.limit());
            }
        }
        for (long lap = position - 200 * turn; lap <= position + 200 * turn; lap += turn) {
            if (axis.datum() + low <= lap && lap <= axis.datum() + high) {
                return true;
            }
        }
        return false;
    }

    /** Every position at which what is reached can change, with its neighbours. */
    TreeSet<Long> edges(long tolerance) {
        TreeSet<Long> edges = new TreeSet<>();
        long far = Math.min(tolerance, 1L << 58);
        for (long place : all()) {
            for (long at : new long[] {place - far, place, place + far}) {
                for (long near = at - 1; near <= at + 1; near++) {
                    edges.add(turn == 0 ? near : Math.floorMod(near, turn));
                }
            }
        }
        if (turn > 0) {
            edges.add(0L);
            edges.add(turn - 1);
            axis.low().ifPresent(stop -> edges.add(Math.floorMod(stop, turn)));
            axis.high().ifPresent(stop -> edges.add(Math.floorMod(stop, turn)));
        }
        return edges;
    }
}
