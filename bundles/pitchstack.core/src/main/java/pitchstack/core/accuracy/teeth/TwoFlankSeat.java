// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.teeth;

/** Where a row comes to rest between two flanks. */
public sealed interface TwoFlankSeat {
    /**
     * It seats.
     *
     * @param positionM along the travel
     * @param depthM into the teeth, from where flanks without error would just touch
     * @param leftBearing how many left flanks bear
     * @param rightBearing how many right flanks bear
     * @param travelStiffnessNPerM against a little more force along the travel at the same preload
     */
    record Seated(double positionM, double depthM, int leftBearing, int rightBearing, double travelStiffnessNPerM)
            implements TwoFlankSeat { }

    /**
     * The force along the travel is too large for the preload: without friction the row climbs out.
     *
     * @param neededPreloadN the preload that would hold it
     */
    record ClimbsOut(double neededPreloadN) implements TwoFlankSeat { }
}
