// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pitchstack.core.stack.Approach;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Direction;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.ShiftLimit;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.Wear;

/**
 * The moves from one setting, carried out one step after another: every order of the stages is tried in turn, and each
 * limit is looked at after each step. Effort is counted along the steps.
 */
final class BruteForceMoves {
    private final AxisSpec axis;
    private final Setting from;
    private final Directions last;
    private final Set<ShiftLimit> heldLimits = new HashSet<>();
    private final Map<Setting, Optional<List<Step>>> known = new HashMap<>();
    /** By stage: where it may stand, smallest index first. */
    private final List<List<Integer>> usable = new ArrayList<>();

    BruteForceMoves(AxisSpec axis, Setting from, Directions last) {
        this.axis = axis;
        this.from = from;
        this.last = last;
        for (StageSpec stage : axis.stages()) {
            usable.add(BruteForce.indicesOf(stage.rows()).stream()
                    .filter(n -> BruteForce.wear(stage.rows(), n) != Wear.BARRED).toList());
        }
        int[] start = from.toArray();
        for (ShiftLimit limit : axis.shiftLimits()) {
            if (meet(start, limit.lowest(), limit.highest()) && holds(limit, start)) {
                heldLimits.add(limit);
            }
        }
    }

    private boolean meet(int[] indices, int lowest, int highest) {
        for (int j = lowest; j <= highest; j++) {
            if (BruteForce.engaged(axis.stages().get(j).rows(), indices[j]).isEmpty()) {
                return false;
            }
        }
        return true;
    }

    private BigInteger shift(int[] indices, int lowest, int highest) {
        BigInteger shift = BigInteger.ZERO;
        for (int j = lowest; j <= highest; j++) {
            StageSpec stage = axis.stages().get(j);
            shift = shift.add(BigInteger.valueOf(indices[j]).multiply(BigInteger.valueOf(stage.pitch())))
                    .add(BigInteger.valueOf(stage.errors().at(indices[j])));
        }
        return shift;
    }

    private boolean holds(ShiftLimit limit, int[] indices) {
        return shift(indices, limit.lowest(), limit.highest()).abs().compareTo(BigInteger.valueOf(limit.limit())) <= 0;
    }

    private boolean keepsLimits(int[] indices) {
        return heldLimits.stream().allMatch(limit -> holds(limit, indices));
    }

    /**
     * The steps of the first order of the stages that keeps the limits, or else of the best way in which the stages take
     * turns; empty where there is neither.
     */
    Optional<List<Step>> steps(int[] to) {
        return known.computeIfAbsent(Setting.of(to), key -> {
            Optional<List<Step>> direct = steps(from.toArray(), to, new ArrayList<>());
            return direct.isPresent() ? direct : new Turns(to).best(from.toArray(), Set.of()).map(Rest::steps);
        });
    }

    private Optional<List<Step>> steps(int[] now, int[] to, List<Step> done) {
        boolean arrived = true;
        for (int j = 0; j < to.length; j++) {
            if (now[j] != to[j]) {
                arrived = false;
                List<Step> longer = new ArrayList<>(done);
                int[] then = now.clone();
                if (move(then, j, to[j], longer)) {
                    Optional<List<Step>> all = steps(then, to, longer);
                    if (all.isPresent()) {
                        return all;
                    }
                }
            }
        }
        return arrived ? Optional.of(done) : Optional.empty();
    }

    private boolean move(int[] now, int j, int to, List<Step> steps) {
        boolean further = axis.approach() == Approach.FORWARD && to < now[j]
                || axis.approach() == Approach.BACK && to > now[j];
        if (!further) {
            steps.add(new Step(j, now[j], to));
            now[j] = to;
            return keepsLimits(now);
        }
        int turn = to < now[j] ? to - 1 : to + 1;
        if (!usable.get(j).contains(turn)) {
            return false;
        }
        steps.add(new Step(j, now[j], turn, Step.Kind.FURTHER));
        now[j] = turn;
        boolean held = keepsLimits(now);
        steps.add(new Step(j, turn, to, Step.Kind.RETURN));
        now[j] = to;
        return held && keepsLimits(now);
    }

    /** The effort of the move to a setting that can be moved to, counted along its steps. */
    long effort(int[] to) {
        long effort = 0;
        Map<Integer, Direction> way = new HashMap<>();
        for (Step step : steps(to).orElseThrow()) {
            EffortCost cost = axis.stages().get(step.stage()).cost();
            Direction next = step.to() > step.from() ? Direction.FORWARD : Direction.BACK;
            Direction before = way.getOrDefault(step.stage(), last.of(step.stage()));
            effort += step.kind() == Step.Kind.RETURN ? 0 : cost.releaseMs();
            effort += before != Direction.UNKNOWN && before != next ? cost.reversalMs() : 0;
            effort += cost.perToothMs() * Math.abs((long) step.to() - step.from());
            way.put(step.stage(), next);
        }
        return effort;
    }

    /** The rest of a move from somewhere on its way: what releases it takes beyond one a stage, and its steps. */
    private record Rest(long extra, List<Step> steps) { }

    /**
     * Stages taking turns, each as far as it can: every sequence of turns, by going through the places on the way one
     * after another and remembering the best rest from each.
     */
    private final class Turns {
        private final int[] to;
        private final Map<List<Object>, Optional<Rest>> rests = new HashMap<>();

        Turns(int[] to) {
            this.to = to;
        }

        /** The least extra effort, then the fewest steps, then the lowest stage first. */
        Optional<Rest> best(int[] now, Set<Integer> moved) {
            List<Object> key = List.of(Setting.of(now), moved);
            Optional<Rest> cached = rests.get(key);
            if (cached != null) {
                return cached;
            }
            Optional<Rest> best = Arrays.equals(now, to) ? Optional.of(new Rest(0, List.of())) : Optional.empty();
            for (int j = 0; j < to.length; j++) {
                List<Step> steps = new ArrayList<>();
                int[] then = now.clone();
                if (now[j] != to[j] && turn(then, j, steps)) {
                    Set<Integer> more = new HashSet<>(moved);
                    long again = more.add(j) ? 0 : axis.stages().get(j).cost().releaseMs();
                    Optional<Rest> rest = best(then, more);
                    if (rest.isPresent()) {
                        steps.addAll(rest.get().steps());
                        Rest whole = new Rest(rest.get().extra() + again, steps);
                        best = best.isEmpty() || isBetter(whole, best.get()) ? Optional.of(whole) : best;
                    }
                }
            }
            rests.put(key, best);
            return best;
        }

        private boolean isBetter(Rest one, Rest other) {
            return one.extra() != other.extra() ? one.extra() < other.extra() : turns(one) < turns(other);
        }

        private long turns(Rest rest) {
            return rest.steps().stream().filter(step -> step.kind() != Step.Kind.RETURN).count();
        }

        /** One stage as far as it can go; false where it cannot move at all. */
        private boolean turn(int[] now, int j, List<Step> steps) {
            int[] whole = now.clone();
            if (move(whole, j, to[j], steps)) {
                now[j] = to[j];
                return true;
            }
            steps.clear();
            boolean further = axis.approach() == Approach.FORWARD && to[j] < now[j]
                    || axis.approach() == Approach.BACK && to[j] > now[j];
            int way = to[j] > now[j] ? 1 : -1;
            int end = further ? to[j] + way : to[j];
            int[] there = now.clone();
            int farthest = now[j];
            for (int n : usable.get(j)) {
                boolean between = way > 0 ? now[j] < n && n < end : end < n && n < now[j];
                there[j] = n;
                if (between && n != to[j] && keepsLimits(there)) {
                    farthest = way > 0 || farthest == now[j] ? n : farthest;
                }
            }
            if (farthest == now[j]) {
                return false;
            }
            steps.add(new Step(j, now[j], farthest, Step.Kind.PARTWAY));
            now[j] = farthest;
            return true;
        }
    }
}
