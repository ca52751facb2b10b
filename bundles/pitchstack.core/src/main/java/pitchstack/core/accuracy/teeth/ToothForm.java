// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.teeth;

/**
 * A straight-sided tooth of a row, as strong and as stiff as its sharp-cornered trapezoid: fillets at the root are left
 * out, which is cautious.
 *
 * @param pitchM tooth spacing, above 0
 * @param flankAngleRad of a flank from the normal of the pitch line, from 0 up to π/2
 * @param addendumM from the pitch line, where tooth and gap are equal, to the tip
 * @param dedendumM from the pitch line to the root
 * @param faceWidthM how wide the row is across the travel, above 0
 */
public record ToothForm(double pitchM, double flankAngleRad, double addendumM, double dedendumM, double faceWidthM) {
    /** Checks that tip and root gap have a width. */
    public ToothForm {
        if (!(pitchM > 0 && addendumM > 0 && dedendumM > 0 && faceWidthM > 0 && flankAngleRad >= 0
                && flankAngleRad < Math.PI / 2)) {
            throw new IllegalArgumentException("Sizes of a tooth are above 0 and its flank angle is below 90°");
        }
        if (!(pitchM / 2 > 2 * Math.tan(flankAngleRad) * Math.max(addendumM, dedendumM))) {
            throw new IllegalArgumentException("The flanks of this tooth meet before its tip or its root");
        }
    }

    /** The basic rack of ISO 53, type A: 20°, addendum 1 and dedendum 1.25 modules. */
    public static ToothForm basicRack(double moduleM, double faceWidthM) {
        return new ToothForm(Math.PI * moduleM, Math.toRadians(20), moduleM, 1.25 * moduleM, faceWidthM);
    }

    /** From root to tip. */
    public double depthM() {
        return addendumM + dedendumM;
    }

    /** How thick the tooth is along the travel at a height above the root, from 0 to the depth. */
    public double thicknessM(double heightM) {
        return pitchM / 2 + 2 * Math.tan(flankAngleRad) * (dedendumM - heightM);
    }

    /** The area between root and tip seen across the travel. */
    public double areaM2() {
        return depthM() * (thicknessM(0) + thicknessM(depthM())) / 2;
    }
}
