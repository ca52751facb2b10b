// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.teeth;

import pitchstack.core.accuracy.material.Elasticity;

/**
 * A tooth of the base row against one of the rider row, of the same form, loaded at the pitch line.
 *
 * @param form of both
 * @param below the one of the base row
 * @param above the one of the rider row
 * @param withBase whether the ground of the teeth gives way too
 */
public record ToothPair(ToothForm form, Part below, Part above, boolean withBase) {
    /**
     * One of the two teeth.
     *
     * @param material what it is made of
     * @param softened whether slot and well are cut into it, as into a printed tooth; a metal rack stays solid
     */
    public record Part(Elasticity material, boolean softened) { }

    /** Two teeth alike, both softened. */
    public static ToothPair alike(ToothForm form, Elasticity material, boolean withBase) {
        Part part = new Part(material, true);
        return new ToothPair(form, part, part, withBase);
    }

    /**
     * The stiffness of a flank along its normal, both teeth giving way, in N/m.
     *
     * @throws IllegalArgumentException if the slot leaves nothing of a tooth
     */
    public double flankNPerM(ToothVariant variant) {
        return tooth(below, variant).flankNPerM(tooth(above, variant), form.flankAngleRad());
    }

    /** The larger of the bending stresses in the two roots, for each newton across, in Pa/N. */
    public double rootStressPaPerN(ToothVariant variant) {
        return Math.max(tooth(below, variant).rootStressPaPerN(), tooth(above, variant).rootStressPaPerN());
    }

    private ToothCompliance tooth(Part part, ToothVariant variant) {
        return ToothCompliance.of(form, part.softened() ? variant : ToothVariant.SOLID, part.material(),
                form.dedendumM(), withBase);
    }
}
