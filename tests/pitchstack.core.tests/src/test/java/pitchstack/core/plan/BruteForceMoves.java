// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pitchstack.core.stack.Approach;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Direction;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.ShiftLimit;
import pitchstack.core.stack.Wear;

/**
 * The moves from one setting, carried out one step after another: every order of the stages is tried in turn, and each
 * limit is looked at after each step. Effort is counted along the steps.
 */
final class BruteForceMoves {
    private final AxisSpec axis;
    private final Setting from;
    private final Directions last;
    private final boolean startStands;
    private final Set<ShiftLimit> heldLimits = new HashSet<>();
    private final boolean lowHeld;
    private final boolean highHeld;
    /** The lap of the free arc in which a rotary axis starts, or none. */
    private final Optional<BigInteger> arc;

    BruteForceMoves(AxisSpec axis, Setting from, Directions last) {
        this.axis = axis;
        this.from = from;
        this.last = last;
        int[] start = from.toArray();
        this.startStands = meet(start, 0, start.length - 1);
        for (ShiftLimit limit : axis.shiftLimits()) {
            if (meet(start, limit.lowest(), limit.highest()) && holds(limit, start)) {
                heldLimits.add(limit);
            }
        }
        boolean linear = axis.scale().turn() == 0;
        this.lowHeld = linear && startStands && aboveLow(start);
        this.highHeld = linear && startStands && belowHigh(start);
        this.arc = linear || !startStands ? Optional.empty() : arc(start);
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
            shift = shift.add(BigInteger.valueOf(indices[j]).multiply(BigInteger.valueOf(axis.stages().get(j).pitch())));
        }
        return shift;
    }

    private BigInteger place(int[] indices) {
        return shift(indices, 0, indices.length - 1).add(BigInteger.valueOf(axis.datum()));
    }

    private boolean holds(ShiftLimit limit, int[] indices) {
        return shift(indices, limit.lowest(), limit.highest()).abs().compareTo(BigInteger.valueOf(limit.limit())) <= 0;
    }

    private boolean aboveLow(int[] indices) {
        return axis.low().isEmpty() || place(indices).compareTo(BigInteger.valueOf(axis.low().getAsLong())) >= 0;
    }

    private boolean belowHigh(int[] indices) {
        return axis.high().isEmpty() || place(indices).compareTo(BigInteger.valueOf(axis.high().getAsLong())) <= 0;
    }

    /**
     * Which lap of the free arc a place lies in, counted from any one; none outside the arc, or without a stop to pass.
     */
    private Optional<BigInteger> arc(int[] indices) {
        BigInteger turn = BigInteger.valueOf(axis.scale().turn());
        BigInteger low = BigInteger.valueOf(axis.low().orElse(0));
        BigInteger high = BigInteger.valueOf(axis.high().orElse(axis.scale().turn() - 1));
        if (high.subtract(low).compareTo(turn.subtract(BigInteger.ONE)) >= 0) {
            return Optional.empty();
        }
        BigInteger width = high.subtract(low).mod(turn);
        BigInteger[] lap = place(indices).subtract(low).divideAndRemainder(turn);
        BigInteger floor = lap[1].signum() < 0 ? lap[0].subtract(BigInteger.ONE) : lap[0];
        boolean allRound = width.equals(turn.subtract(BigInteger.ONE));
        boolean inside = place(indices).subtract(low).mod(turn).compareTo(width) <= 0;
        return inside && !allRound ? Optional.of(floor) : Optional.empty();
    }

    private boolean keepsLimits(int[] indices) {
        return heldLimits.stream().allMatch(limit -> holds(limit, indices)) && (!lowHeld || aboveLow(indices))
                && (!highHeld || belowHigh(indices)) && (arc.isEmpty() || arc.equals(arc(indices)));
    }

    /** The steps of the first order that keeps the limits; empty where there is none. */
    Optional<List<Step>> steps(int[] to) {
        return steps(from.toArray(), to, new ArrayList<>());
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
        RowPair rows = axis.stages().get(j).rows();
        if (!BruteForce.indicesOf(rows).contains(turn) || BruteForce.wear(rows, turn) == Wear.BARRED) {
            return false;
        }
        steps.add(new Step(j, now[j], turn, Step.Kind.FURTHER));
        now[j] = turn;
        boolean held = keepsLimits(now);
        steps.add(new Step(j, turn, to, Step.Kind.RETURN));
        now[j] = to;
        return held && keepsLimits(now);
    }

    /** The effort of a move, whether or not the limits let it be made. */
    long effort(int[] to) {
        long effort = 0;
        for (int j = 0; j < to.length; j++) {
            int start = from.index(j);
            if (to[j] != start) {
                EffortCost cost = axis.stages().get(j).cost();
                effort += cost.releaseMs();
                Direction way = last.of(j);
                for (int stop : stops(start, to[j])) {
                    Direction next = stop > start ? Direction.FORWARD : Direction.BACK;
                    effort += way != Direction.UNKNOWN && way != next ? cost.reversalMs() : 0;
                    effort += cost.perToothMs() * Math.abs((long) stop - start);
                    way = next;
                    start = stop;
                }
            }
        }
        return effort;
    }

    private List<Integer> stops(int start, int to) {
        if (axis.approach() == Approach.FORWARD && to < start) {
            return List.of(to - 1, to);
        }
        return axis.approach() == Approach.BACK && to > start ? List.of(to + 1, to) : List.of(to);
    }
}
