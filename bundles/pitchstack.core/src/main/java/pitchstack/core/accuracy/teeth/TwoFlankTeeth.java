// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.teeth;

import java.util.Arrays;

/**
 * Teeth with a left and a right flank under a preload. Gaps close by (x − eL)·cos α + z·sin α on the left and
 * −(x − eR)·cos α + z·sin α on the right, x along the travel, z into the teeth, α the flank angle from the normal of the
 * pitch line; forces are k times that where it is above 0. Equilibrium:
 * cos α·(ΣL − ΣR) = Fx and sin α·(ΣL + ΣR) = Fz.
 *
 * <p>In u = x·cos α + z·sin α and v = −x·cos α + z·sin α the two sides come apart: the left flanks are one-sided springs in u
 * under (Fz/sin α + Fx/cos α)/2, the right ones in v under (Fz/sin α − Fx/cos α)/2. So the answer is closed here too.
 */
public final class TwoFlankTeeth {
    private final OneSidedTeeth left;
    private final OneSidedTeeth right;
    private final double cos;
    private final double sin;

    /**
     * Teeth.
     *
     * @param leftM where each left flank comes to bear along the travel at depth 0; left flanks stop the row on its way to
     *     higher positions
     * @param rightM where each right flank comes to bear
     * @param stiffnessNPerM of a flank along its normal, above 0
     * @param flankAngleRad between 0 and π/2
     */
    public TwoFlankTeeth(double[] leftM, double[] rightM, double stiffnessNPerM, double flankAngleRad) {
        if (!(flankAngleRad > 0 && flankAngleRad < Math.PI / 2)) {
            throw new IllegalArgumentException("A flank angle is between 0 and 90°, not " + Math.toDegrees(flankAngleRad));
        }
        cos = Math.cos(flankAngleRad);
        sin = Math.sin(flankAngleRad);
        left = new OneSidedTeeth(Arrays.stream(leftM).map(e -> e * cos).toArray(), stiffnessNPerM);
        right = new OneSidedTeeth(Arrays.stream(rightM).map(e -> -e * cos).toArray(), stiffnessNPerM);
    }

    /**
     * Where they hold without friction.
     *
     * @param travelN force along the travel
     * @param preloadN force into the teeth, above 0
     */
    public TwoFlankSeat seat(double travelN, double preloadN) {
        double onLeft = (preloadN / sin + travelN / cos) / 2;
        double onRight = (preloadN / sin - travelN / cos) / 2;
        if (!(onLeft >= 0 && onRight >= 0)) {
            return new TwoFlankSeat.ClimbsOut(Math.abs(travelN) * sin / cos);
        }
        Seat u = left.seat(onLeft);
        Seat v = right.seat(onRight);
        // Left and right in series along the slope, seen along the travel.
        double stiffness = 4 * cos * cos * u.stiffnessNPerM() * v.stiffnessNPerM() / (u.stiffnessNPerM() + v.stiffnessNPerM());
        return new TwoFlankSeat.Seated((u.positionM() - v.positionM()) / (2 * cos),
                (u.positionM() + v.positionM()) / (2 * sin), u.bearing(), v.bearing(), stiffness);
    }

    /** The preload from which on every flank bears, without a force along the travel. */
    public double fullBearingN() {
        return 2 * sin * Math.max(left.fullBearingN(), right.fullBearingN());
    }

    /**
     * How far to either side of where it would seat without friction the row may stay: both flanks slide in under the
     * preload, and friction along them, μ times the force on them, can hold μ·Fz·sin α/(sin α + μ·cos α) along the travel.
     *
     * @param preloadN above 0
     * @param friction its coefficient μ, at least 0
     */
    public double deadBandM(double preloadN, double friction) {
        if (seat(0, preloadN) instanceof TwoFlankSeat.Seated seated) {
            return friction * preloadN * sin / (sin + friction * cos) / seated.travelStiffnessNPerM();
        }
        throw new IllegalArgumentException("A preload is above 0, not " + preloadN);
    }
}
