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

    /**
     * The last lap of those from one on in which every group of offsets lies and the coarse stage has to move up for all
     * of them, or down for all of them; the lap before where this one is not such a lap. Of even places.
     */
    long alikeUntil(long lap) {
        Laps laps = places.laps;
        long until = places.fullUntil(lap);
        if (except != null || until < lap || !places.isEven()) {
            return lap - 1;
        }
        if (lap - laps.highestLap() > home) {
            return until;
        }
        return lap - laps.lowestLap() < home ? Math.min(until, home + laps.lowestLap() - 1) : lap - 1;
    }

    /** Of such a lap, whether the stage has to move up. */
    boolean isUp(long lap) {
        return lap - places.laps.highestLap() > home;
    }
}
