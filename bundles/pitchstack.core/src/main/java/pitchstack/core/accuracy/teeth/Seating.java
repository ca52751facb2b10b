// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.teeth;

/**
 * A row to simulate: teeth with two flanks of Gaussian errors under a preload.
 *
 * @param teeth how many are engaged, at least 1
 * @param stiffnessNPerM of a flank along its normal, above 0
 * @param scatterM standard deviation of a flank along the travel, at least 0
 * @param flankAngleRad between 0 and π/2
 * @param preloadN above 0
 * @param neighbours correlation of the errors of neighbouring teeth on the same side, from 0 up to but not including 1,
 *     fading by this part with every tooth
 */
public record Seating(int teeth, double stiffnessNPerM, double scatterM, double flankAngleRad, double preloadN,
        double neighbours) {
    /** Checks the numbers. */
    public Seating {
        if (!(teeth >= 1 && stiffnessNPerM > 0 && scatterM >= 0 && preloadN > 0 && neighbours >= 0 && neighbours < 1
                && flankAngleRad > 0 && flankAngleRad < Math.PI / 2)) {
            throw new IllegalArgumentException("No such row: " + teeth + " teeth, " + stiffnessNPerM + " N/m, " + scatterM
                    + " m, " + flankAngleRad + " rad, " + preloadN + " N, correlation " + neighbours);
        }
    }
}
