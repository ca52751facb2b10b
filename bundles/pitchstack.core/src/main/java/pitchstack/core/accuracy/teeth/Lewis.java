// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.teeth;

/**
 * Root stress after Lewis: a load at the tip of one tooth alone, σ = F/(b·m·Y). For straight flanks the parabola of equal
 * strength gives Y = (8/3)·(π/4 − tan α)·tan α/cos² α, which holds where the tooth is deeper than where the parabola
 * touches, and is cautious where it is not.
 */
public final class Lewis {
    /** What tables give for a rack of 20°: 0.154·π. They allow for a fillet. */
    public static final double TABLE_RACK_20 = 0.154 * Math.PI;

    private Lewis() {
    }

    /** Y for straight flanks, addendum one module; α above 0 and below 38°, where flanks meet at the tip. */
    public static double factor(double flankAngleRad) {
        double tan = Math.tan(flankAngleRad);
        return 8.0 / 3 * (Math.PI / 4 - tan) * tan * (1 + tan * tan);
    }

    /** How far below the tip the parabola touches, in modules. */
    public static double criticalDepth(double flankAngleRad) {
        double tan = Math.tan(flankAngleRad);
        double halfTip = Math.PI / 4 - tan;
        return halfTip / tan + 2 * halfTip * tan;
    }

    /**
     * The stress.
     *
     * @param forceN along the travel, on one tooth
     * @param factor Y
     */
    public static double stressPa(double forceN, double faceWidthM, double moduleM, double factor) {
        return forceN / (faceWidthM * moduleM * factor);
    }
}
