// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.teeth;

/** Teeth in the shape of an arrow, which hold across the travel too. */
public final class Herringbone {
    private Herringbone() {
    }

    /** Stiffness across the travel over that along it: tan² ψ, ψ the angle between a tooth and the normal of the travel. */
    public static double acrossOverAlong(double angleRad) {
        return Math.pow(Math.tan(angleRad), 2);
    }
}
