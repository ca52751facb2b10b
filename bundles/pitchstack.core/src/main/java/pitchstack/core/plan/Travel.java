// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.ArrayList;
import java.util.List;
import pitchstack.core.stack.AxisSpec;

/**
 * Where the carriage may stand. A place is the sum of datum and offsets; on a rotary axis the rows can carry it over
 * several laps, places a turn apart are one position, and the stops leave free an arc of it.
 *
 * @param low the lowest place that the rows, and a stop of a linear axis, allow
 * @param high the highest such place; below {@code low} where there is none
 * @param turn counts in one turn, 0 on a linear axis
 * @param arcStart where the free arc of a rotary axis begins, in [0, turn)
 * @param arcWidth how far it goes on, in [0, turn); {@code turn − 1} where every position is free
 */
public record Travel(long low, long high, long turn, long arcStart, long arcWidth) {
    /**
     * The travel of an axis.
     *
     * @param lowestPlace the lowest place that the rows and limits over all stages allow
     * @param highestPlace the highest such place
     */
    static Travel of(AxisSpec axis, long lowestPlace, long highestPlace) {
        long turn = axis.scale().turn();
        if (turn == 0) {
            return new Travel(Math.max(lowestPlace, axis.low().orElse(Long.MIN_VALUE)),
                    Math.min(highestPlace, axis.high().orElse(Long.MAX_VALUE)), 0, 0, 0);
        }
        long start = axis.low().orElse(0);
        long end = axis.high().orElse(turn - 1);
        boolean allRound = Saturated.subtract(end, start) >= turn - 1;
        long from = Math.floorMod(start, turn);
        return new Travel(lowestPlace, highestPlace, turn, from,
                allRound ? turn - 1 : Math.floorMod(Math.floorMod(end, turn) - from, turn));
    }

    /** From the lowest to the highest position, on a rotary axis at most the free arc; 0 where there is none. */
    long width() {
        return Math.max(0, turn == 0 ? high - low : Math.min(high - low, arcWidth));
    }

    /** Where to look for settings within a tolerance of a target. */
    List<Window> within(long target, long tolerance) {
        List<Window> windows = new ArrayList<>();
        if (turn == 0) {
            addFree(windows, target, Saturated.subtract(target, tolerance), Saturated.add(target, tolerance));
            return windows;
        }
        // Half a turn at most, so that the windows of two laps share no place and errors go the short way round.
        long up = Math.min(tolerance, turn / 2);
        long down = Math.min(tolerance, (turn - 1) / 2);
        for (long center = firstLap(target); center - down <= high; center += turn) {
            addFree(windows, center, center - down, center + up);
        }
        return windows;
    }

    /** Where to look for the nearest setting at or below a target, or at or above it. */
    List<Window> beside(long target, boolean below) {
        List<Window> windows = new ArrayList<>();
        if (low > high) {
            return windows;
        }
        if (turn == 0) {
            long center = Math.max(low - 1, Math.min(high + 1, target));
            addFree(windows, center, below ? low : center, below ? center : high);
            return windows;
        }
        for (long center = firstLap(target); center - turn < high; center += turn) {
            addFree(windows, center, below ? center - turn + 1 : center, below ? center : center + turn - 1);
        }
        return windows;
    }

    /** Whether a target lies in the free arc and in the arc that the rows reach. */
    boolean arcsReach(long target) {
        boolean rowsReach = high - low >= turn || Math.floorMod(target - low, turn) <= high - low;
        return rowsReach && Math.floorMod(target - arcStart, turn) <= arcWidth;
    }

    /** The target's lap so far down that no place lies a turn below it. */
    private long firstLap(long target) {
        return low - turn + Math.floorMod(target - low, turn);
    }

    private void addFree(List<Window> windows, long center, long from, long to) {
        long a = Math.max(from, low);
        long b = Math.min(to, high);
        if (turn == 0 || arcWidth == turn - 1) {
            add(windows, center, a, b);
            return;
        }
        for (long arc = a - Math.floorMod(a - arcStart, turn); arc <= b; arc += turn) {
            add(windows, center, Math.max(a, arc), Math.min(b, arc + arcWidth));
        }
    }

    private static void add(List<Window> windows, long center, long from, long to) {
        if (from <= to) {
            windows.add(new Window(center, from, to));
        }
    }
}
