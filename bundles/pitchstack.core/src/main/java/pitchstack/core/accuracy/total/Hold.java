// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.total;

/**
 * How the rows of a stage are held together.
 *
 * @param stiffnessNPerM of a flank along its normal, above 0
 * @param flankAngleRad between 0 and π/2
 * @param preloadN above 0
 * @param friction its coefficient, at least 0
 */
public record Hold(double stiffnessNPerM, double flankAngleRad, double preloadN, double friction) {
    /** Checks the numbers. */
    public Hold {
        if (!(stiffnessNPerM > 0 && flankAngleRad > 0 && flankAngleRad < Math.PI / 2 && preloadN > 0 && friction >= 0)) {
            throw new IllegalArgumentException("Stiffness, angle and preload are above 0, friction at least 0");
        }
    }
}
