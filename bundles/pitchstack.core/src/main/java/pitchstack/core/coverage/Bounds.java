// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.ArrayList;
import java.util.List;
import pitchstack.core.plan.Progress;
import pitchstack.core.plan.Travel;

/**
 * The travel as arcs of positions, and as windows of places, which on a rotary axis come round again.
 *
 * @param turn counts in one turn, 0 on a linear axis
 * @param allRound whether the travel is a whole turn, without ends
 * @param arcs the travel; on a rotary axis an arc starts in [0, turn) and may go on beyond
 * @param places from the lowest to the highest place of a setting, whatever the state of its teeth
 */
record Bounds(long turn, boolean allRound, List<Arc> arcs, Arc places) {
    /** Neighbouring positions or places, both ends included. */
    record Arc(long low, long high) {
        private Arc shift(long by) {
            return new Arc(low + by, high + by);
        }

        /** The part in another arc; its end is below its start where there is none. */
        Arc and(Arc other) {
            return new Arc(Math.max(low, other.low), Math.min(high, other.high));
        }

        boolean isEmpty() {
            return high < low;
        }
    }

    /**
     * The bounds of an axis.
     *
     * @param travel where stops, rows and limits over all stages let the carriage stand
     * @param any the places over teeth of any kind; {@code null} where there is none
     */
    static Bounds of(Travel travel, Places any) {
        Arc rows = new Arc(travel.low(), travel.high());
        Bounds none = new Bounds(travel.turn(), false, List.of(), rows);
        if (rows.isEmpty()) {
            return none;
        }
        Bounds wide = travel.turn() == 0 ? new Bounds(0, false, List.of(rows), rows) : rotary(travel, rows);
        Spans ends = new Scan(any, wide, Integer.MAX_VALUE, Progress.NONE).ends();
        if (ends.isEmpty()) {
            return none;
        }
        Arc tight = new Arc(ends.lowest(), ends.highest());
        return new Bounds(wide.turn, wide.allRound, wide.turn == 0 ? List.of(tight) : wide.arcs, tight);
    }

    /** The arcs that the stops of a rotary axis leave free and that the rows reach. */
    private static Bounds rotary(Travel travel, Arc places) {
        long turn = travel.turn();
        Arc free = new Arc(travel.arcStart(), travel.arcStart() + travel.arcWidth());
        boolean rowsAllRound = travel.high() - travel.low() >= turn - 1;
        boolean freeAllRound = travel.arcWidth() == turn - 1;
        if (rowsAllRound) {
            return new Bounds(turn, freeAllRound, List.of(free), places);
        }
        long start = Math.floorMod(travel.low(), turn);
        Arc rows = new Arc(start, start + travel.high() - travel.low());
        if (freeAllRound) {
            return new Bounds(turn, false, List.of(rows), places);
        }
        List<Arc> arcs = new ArrayList<>();
        for (long lap = -turn; lap <= turn; lap += turn) {
            Arc both = free.and(rows.shift(lap));
            if (!both.isEmpty()) {
                arcs.add(both.shift(Math.floorMod(both.low, turn) - both.low));
            }
        }
        return new Bounds(turn, false, arcs, places);
    }

    /** Every part of the places that comes to lie in an arc of positions. */
    List<Arc> windows(Arc arc) {
        if (turn == 0 || allRound) {
            return List.of(places);
        }
        List<Arc> windows = new ArrayList<>();
        long first = Math.floorDiv(places.low - arc.high, turn);
        for (long shift = first * turn; arc.low + shift <= places.high; shift += turn) {
            Arc part = arc.shift(shift).and(places);
            if (!part.isEmpty()) {
                windows.add(part);
            }
        }
        return windows;
    }

    /** The travel as positions in [0, turn), or as it is on a linear axis. */
    Spans travel() {
        Spans travel = Spans.NONE;
        for (Arc arc : arcs) {
            travel = travel.or(onTurn(Spans.of(arc.low, arc.high), 1), 1);
        }
        return travel;
    }

    /**
     * Places brought back into one turn, where places come round again.
     *
     * @param join the largest distance within one span
     */
    Spans onTurn(Spans places, long join) {
        return turn == 0 ? places : places.wrapped(turn, join);
    }
}
