// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.teeth;

import pitchstack.core.accuracy.material.Elasticity;

/**
 * How one tooth gives way, and what its root bears.
 *
 * @param bendingMPerN by bending
 * @param shearMPerN by shear
 * @param baseMPerN by its ground, 0 where that is left out
 * @param rootStressPaPerN the largest bending stress for each newton across
 */
public record ToothCompliance(double bendingMPerN, double shearMPerN, double baseMPerN, double rootStressPaPerN) {
    /**
     * Of a tooth loaded across at a height.
     *
     * @param heightM of the load above the dedendum, above 0; {@link ToothForm#dedendumM} for the pitch line
     * @param withBase whether the ground counts
     * @throws IllegalArgumentException if the slot leaves nothing at the load
     */
    public static ToothCompliance of(ToothForm form, ToothVariant variant, Elasticity material, double heightM,
            boolean withBase) {
        int parts = variant.slotM() > 0 ? 2 : 1;
        int bearing = variant.oneLeafBears() ? 1 : parts;
        Beam leaf = new Beam(heightM, (form.thicknessM(0) - variant.slotM()) / parts,
                (form.thicknessM(heightM) - variant.slotM()) / parts, form.faceWidthM());
        double well = variant.wellM();
        double whole = heightM + well;
        // The straight part below carries the load at a distance: ∫ M²/EI and ∫ V²/GA over it alone.
        Beam longStraight = new Beam(whole, leaf.rootM(), leaf.rootM(), leaf.widthM());
        Beam above = new Beam(heightM, leaf.rootM(), leaf.rootM(), leaf.widthM());
        double bending = leaf.bendingMPerN(material)
                + (well > 0 ? longStraight.bendingMPerN(material) - above.bendingMPerN(material) : 0);
        double shear = leaf.shearMPerN(material)
                + (well > 0 ? longStraight.shearMPerN(material) - above.shearMPerN(material) : 0);
        double stress = Math.max(leaf.stressPaPerN(), well > 0 ? longStraight.stressPaPerN() : 0);
        Beam onGround = new Beam(whole, form.thicknessM(0), form.thicknessM(0), form.faceWidthM());
        double base = withBase ? RootBase.deflectionMPerN(onGround, form.flankAngleRad(), material) : 0;
        return new ToothCompliance(bending / bearing, shear / bearing, base, stress / bearing);
    }

    /** The stiffness of the tooth across, N/m. */
    public double stiffnessNPerM() {
        return 1 / (bendingMPerN + shearMPerN + baseMPerN);
    }

    /**
     * The stiffness of a flank along its normal, of two teeth against each other: load and way both turn by α, so it is
     * that across over cos² α.
     */
    public double flankNPerM(ToothCompliance mate, double flankAngleRad) {
        return againstNPerM(mate) / Math.pow(Math.cos(flankAngleRad), 2);
    }

    /** The stiffness of this tooth against another: both give way. */
    public double againstNPerM(ToothCompliance mate) {
        return 1 / (1 / stiffnessNPerM() + 1 / mate.stiffnessNPerM());
    }
}
