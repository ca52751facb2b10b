// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import pitchstack.core.stack.EffortCost;

/**
 * The settings whose efforts are painted.
 *
 * @param places the places, whose offsets carry efforts
 * @param except places of the same offsets whose indices are left out; {@code null} for none
 * @param home the index at which the coarse stage stands
 * @param cost what moving the coarse stage costs
 * @param extra what to add to every effort
 */
record EffortSource(Places places, Places except, long home, EffortCost cost, int extra) {
    /** Whether an index of the coarse stage counts. */
    boolean has(long index) {
        return places.allows(index) && (except == null || !except.allows(index));
    }

    /** What moving the coarse stage to an index adds to the effort of an offset. */
    long add(long index) {
        return extra + (index == home ? 0 : cost.releaseMs() + cost.perToothMs() * Math.abs(index - home));
    }

    /** The same but for the teeth, for any other index than {@link #home}. */
    long addReleased() {
        return extra + cost.releaseMs();
    }

    /** Whether every group of offsets lies in a lap, and the coarse stage moves up for all or down for all. */
    boolean isAll(long lap) {
        Laps laps = places.laps;
        boolean oneWay = lap - laps.highestLap() > home || lap - laps.lowestLap() < home;
        return except == null && places.isEven() && oneWay && places.fullUntil(lap) >= lap;
    }
}
