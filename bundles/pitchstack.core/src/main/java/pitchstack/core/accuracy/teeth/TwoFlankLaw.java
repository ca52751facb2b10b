// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.teeth;

/**
 * The law of {@link SeatLaw} for teeth with two flanks of independent errors: each side is a row of one-sided springs of
 * scatter σ·cos α under Fz/(2·sin α), and the position is half the difference of the two. So Fz = N·k·σ·sin 2α·[tΦ + φ],
 * and the position scatters by σ·√V/√(2N).
 *
 * @param teeth N, independent ones, at least 1
 * @param stiffnessNPerM of a flank along its normal
 * @param scatterM σ of the flanks, along the travel; above 0
 * @param flankAngleRad between 0 and π/2
 */
public record TwoFlankLaw(double teeth, double stiffnessNPerM, double scatterM, double flankAngleRad) {
    /** Checks the angle; {@link SeatLaw} checks the others. */
    public TwoFlankLaw {
        if (!(flankAngleRad > 0 && flankAngleRad < Math.PI / 2)) {
            throw new IllegalArgumentException("A flank angle is between 0 and 90°, not " + Math.toDegrees(flankAngleRad));
        }
    }

    /**
     * What a preload does.
     *
     * @param bearingShare which part of the flanks bears, from 0 to 1
     * @param travelStiffnessNPerM against force along the travel
     * @param spreadM standard deviation of the position over many rows made alike
     * @param deadBandM how far to either side friction can hold the row
     */
    public record Point(double bearingShare, double travelStiffnessNPerM, double spreadM, double deadBandM) { }

    private SeatLaw side() {
        return new SeatLaw(teeth, stiffnessNPerM, scatterM * Math.cos(flankAngleRad));
    }

    /** The preload at which a part of the flanks bears, above 0 and below 1. */
    public double preloadN(double share) {
        return 2 * Math.sin(flankAngleRad) * side().preloadN(share);
    }

    /** The preload at which all flanks bear, on average; taken as for the highest of all 2N, which is close. */
    public double fullBearingN() {
        return 2 * Math.sin(flankAngleRad) * teeth * stiffnessNPerM * scatterM * Math.cos(flankAngleRad)
                * OrderStatistics.meanOfHighest((int) Math.round(2 * teeth));
    }

    /**
     * What a preload does.
     *
     * @param preloadN above 0
     * @param friction its coefficient, at least 0
     */
    public Point at(double preloadN, double friction) {
        double sin = Math.sin(flankAngleRad);
        double cos = Math.cos(flankAngleRad);
        SeatLaw.Point side = side().at(preloadN / (2 * sin));
        double stiffness = 2 * cos * cos * side.stiffnessNPerM();
        double held = friction * preloadN * sin / (sin + friction * cos);
        return new Point(side.bearingShare(), stiffness, side.spreadM() / cos / Math.sqrt(2), held / stiffness);
    }
}
