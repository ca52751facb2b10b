// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Which positions of the travel are reached within a tolerance, exactly. The travel goes from the lowest to the highest
 * position that any setting gives which rows, stops and limits allow, whatever the state of its teeth; on a rotary axis
 * it is the arc that the stops leave free and the rows reach. Never changed.
 */
public final class Coverage {
    private final long tolerance;
    private final long turn;
    private final Stretches stretches;

    Coverage(long tolerance, long turn, Stretches stretches) {
        this.tolerance = tolerance;
        this.turn = turn;
        this.stretches = stretches;
    }

    /** The tolerance, itself included, in counts. */
    public long tolerance() {
        return tolerance;
    }

    /**
     * All stretches of the travel, lowest first; neighbours are reached in different ways. On a rotary axis they lie in
     * [0, turn), and one over 0 is two. The list cannot be changed, and makes its elements as they are asked for.
     */
    public List<Stretch> stretches() {
        return stretches;
    }

    /** How a position is reached; beyond the travel, and for one beyond a turn on a rotary axis, not. */
    public Reached at(long position) {
        int i = stretches.at(position);
        return i < 0 ? Reached.NOT : Reached.of(stretches.code(i));
    }

    /**
     * The stretches inside the travel that are not reached, lowest first. On a rotary axis a gap over 0 comes last, as
     * one stretch that goes on beyond a turn.
     */
    public List<Stretch> gaps() {
        List<Stretch> gaps = new ArrayList<>();
        for (int i = 0; i < stretches.size(); i++) {
            if (stretches.code(i) == Reached.NOT.code()) {
                gaps.add(stretches.get(i));
            }
        }
        int last = gaps.size() - 1;
        if (turn > 0 && last > 0 && gaps.get(0).low() == 0 && gaps.get(last).high() == turn - 1) {
            gaps.set(last, new Stretch(gaps.get(last).low(), turn + gaps.get(0).high(), Reached.NOT));
            gaps.remove(0);
        }
        return gaps;
    }

    /** The figures that sum it up. */
    public CoverageSummary summary() {
        long[] counts = new long[Reached.values().length];
        for (int i = 0; i < stretches.size(); i++) {
            counts[stretches.code(i)] += stretches.high(i) - stretches.low(i) + 1;
        }
        List<Stretch> gaps = gaps();
        Comparator<Stretch> lowestOfTheLargest = Comparator.comparingLong(Stretch::size)
                .thenComparing(Comparator.comparingLong(Stretch::low).reversed());
        return new CoverageSummary(counts[Reached.CLEAN.ordinal()], counts[Reached.WORN.ordinal()],
                counts[Reached.NOT.ordinal()], gaps.size(), gaps.stream().max(lowestOfTheLargest));
    }
}
