// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.PriorityQueue;
import java.util.Set;
import pitchstack.core.stack.Setting;

/**
 * Splits a move into more steps than stages, where moving each stage once would break a limit on the way: stages take
 * turns, each going as far as the limits and the teeth allow. Every further step of a stage costs a release. Of all ways
 * to take turns the cheapest is found, then the one of fewest steps, then the one that moves the lower stages first.
 */
final class MoveSplitter {
    /** No one would work through a longer list for one move. */
    static final int MOST_STEPS = 64;
    /** States looked at, at the most; far more than two or three stages against one limit can have. */
    private static final int MOST_STATES = 20_000;

    /**
     * Where the stages stand on the way, the steps so far, two numbers each (stage, index), and what releases beyond one a
     * stage have cost.
     */
    private record State(int[] indices, int[] steps, long extraMs) {
        int count() {
            return steps.length / 2;
        }
    }

    private static final Comparator<State> FIRST = Comparator.comparingLong(State::extraMs)
            .thenComparingInt(State::count).thenComparing(State::steps, MoveSplitter::compareStages);

    /**
     * A way to split a move.
     *
     * @param steps stage and index by step, two numbers each; the last step of a stage takes it to its place
     * @param extraMs what the further steps cost, in milliseconds
     */
    record Split(int[] steps, long extraMs) { }

    private final StageMoves[] stages;
    private final Component component;
    private final ShiftBand[] bands;
    private final int[] to;
    private final long mostMs;

    /**
     * @param stages the moves of every stage of the axis
     * @param component the stages that take turns
     * @param bands the limits to keep, which hold at the start
     * @param to the setting to move to
     * @param mostMs what further steps may cost
     */
    MoveSplitter(StageMoves[] stages, Component component, ShiftBand[] bands, int[] to, long mostMs) {
        this.stages = stages;
        this.component = component;
        this.mostMs = mostMs;
        this.bands = bands;
        this.to = to;
    }

    private static int compareStages(int[] one, int[] other) {
        for (int i = 0; i < Math.min(one.length, other.length); i += 2) {
            if (one[i] != other[i]) {
                return Integer.compare(one[i], other[i]);
            }
        }
        return Integer.compare(one.length, other.length);
    }

    /** The best way, or null where taking turns does not help, or not at that cost. */
    Split find() {
        if (leastExtra() > mostMs) {
            return null;
        }
        PriorityQueue<State> open = new PriorityQueue<>(FIRST);
        Set<Setting> closed = new HashSet<>();
        int[] from = new int[stages.length];
        for (int j = 0; j < from.length; j++) {
            from[j] = stages[j].from;
        }
        open.add(new State(from, new int[0], 0));
        while (!open.isEmpty() && closed.size() < MOST_STATES) {
            State state = open.remove();
            if (isThere(state)) {
                return new Split(state.steps(), state.extraMs());
            }
            boolean first = closed.add(Setting.of(state.indices()));
            for (int j = component.lowest(); first && state.count() < MOST_STEPS && j <= component.highest(); j++) {
                int next = next(state.indices(), j);
                if (next != state.indices()[j] && extra(state, j) <= mostMs) {
                    open.add(after(state, j, next));
                }
            }
        }
        return null;
    }

    private State after(State state, int j, int index) {
        int[] indices = state.indices().clone();
        indices[j] = index;
        int[] steps = Arrays.copyOf(state.steps(), state.steps().length + 2);
        steps[steps.length - 2] = j;
        steps[steps.length - 1] = index;
        return new State(indices, steps, extra(state, j));
    }

    /** A stage only ever goes on towards its place, so it has moved if it does not stand where it began. */
    private long extra(State state, int j) {
        return state.extraMs() + (state.indices()[j] == stages[j].from ? 0 : stages[j].table.cost.releaseMs());
    }

    /** One release more of the stage that is the cheapest to release. */
    private long leastExtra() {
        long least = Long.MAX_VALUE;
        for (int j = component.lowest(); j <= component.highest(); j++) {
            least = to[j] == stages[j].from ? least : Math.min(least, stages[j].table.cost.releaseMs());
        }
        return least;
    }

    private boolean isThere(State state) {
        return Arrays.equals(state.indices(), component.lowest(), component.highest() + 1, to, component.lowest(),
                component.highest() + 1);
    }

    /** How far a stage can go: to its place, or to the last usable index before a limit; where it stands if nowhere. */
    private int next(int[] indices, int j) {
        int at = indices[j];
        if (at == to[j]) {
            return at;
        }
        StageMoves stage = stages[j];
        int goal = stage.turn(to[j]);
        int way = goal > at ? 1 : -1;
        int farthest = farthest(indices, j, goal);
        if (farthest == goal) {
            return to[j];
        }
        for (int index = farthest; index != at && index > at == way > 0; index -= way) {
            // Stopping at its place while it must still go one further would look as if it had arrived.
            if (stage.table.isUsable(index) && index != to[j]) {
                return index;
            }
        }
        return at;
    }

    /** How far the limits let a stage go towards an index of its range. */
    private int farthest(int[] indices, int j, int goal) {
        StageTable table = stages[j].table;
        long start = table.offset(indices[j]);
        int farthest = goal;
        for (ShiftBand band : bands) {
            if (band.concerns(j)) {
                long others = shift(indices, band) - start;
                farthest = goal > indices[j] ? Math.min(farthest, table.lastAtMost(Saturated.subtract(band.high(), others)))
                        : Math.max(farthest, table.firstAtLeast(Saturated.subtract(band.low(), others)));
            }
        }
        return farthest;
    }

    private long shift(int[] indices, ShiftBand band) {
        long shift = 0;
        for (int j = band.lowest(); j <= band.highest(); j++) {
            shift += stages[j].table.offset(indices[j]);
        }
        return shift;
    }
}
