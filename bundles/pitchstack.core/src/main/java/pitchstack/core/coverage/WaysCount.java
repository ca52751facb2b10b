// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import pitchstack.core.coverage.Bounds.Arc;

/**
 * Counts the settings that reach a position.
 *
 * @param bounds the travel
 * @param position any position
 * @param tolerance itself included, at least 0
 */
record WaysCount(Bounds bounds, long position, long tolerance) {
    /** Those among some places; {@code null} stands for no place. */
    long of(Places places) {
        long ways = 0;
        if (places != null) {
            for (Arc arc : bounds.arcs()) {
                for (Arc window : bounds.windows(arc)) {
                    ways += bounds.turn() == 0 ? onLine(places, window) : onTurn(places, window);
                }
            }
        }
        return ways;
    }

    private long onLine(Places places, Arc within) {
        // Stops at the ends of the long range instead of wrapping.
        long low = Math.max(position, Long.MIN_VALUE + tolerance) - tolerance;
        long high = Math.min(position, Long.MAX_VALUE - tolerance) + tolerance;
        return ways(places, new Arc(low, high).and(within));
    }

    private long onTurn(Places places, Arc within) {
        long turn = bounds.turn();
        // Half a turn at most, so that the windows of two laps share no place.
        long up = Math.min(tolerance, turn / 2);
        long down = Math.min(tolerance, (turn - 1) / 2);
        long ways = 0;
        long lowest = within.low() - up;
        for (long center = lowest + Math.floorMod(Math.floorMod(position, turn) - lowest, turn);
                center - down <= within.high(); center += turn) {
            ways += ways(places, new Arc(center - down, center + up).and(within));
        }
        return ways;
    }

    private static long ways(Places places, Arc window) {
        return window.isEmpty() ? 0 : places.ways(window.low(), window.high());
    }
}
