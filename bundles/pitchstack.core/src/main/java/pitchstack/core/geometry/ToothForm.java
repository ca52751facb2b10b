// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry;

/**
 * The tooth of a row, the same on both rows of a pair: on the reference line tooth and gap are half a pitch wide, so that
 * the flanks bear when both lines coincide, and the tips stand off the roots by the clearance.
 *
 * @param pitchMm tooth spacing
 * @param flankAngleDeg the angle of a flank against the line across the row, above 0, below 45
 * @param addendumMm from the reference line up to the tip
 * @param dedendumMm from the reference line down to the root
 * @param filletMm radius at the root, 0 for a sharp corner
 * @param tipReliefMm how far below the tip the flanks end and are rounded off to it
 * @param wellMm how much deeper than the root the gap is cut, between parallel walls
 * @param slotMm width of the slot that splits the tooth down to its root, 0 for none
 */
public record ToothForm(double pitchMm, double flankAngleDeg, double addendumMm, double dedendumMm, double filletMm,
        double tipReliefMm, double wellMm, double slotMm) {
    /** How much of a gap its roundings may take, so that some floor is left between them; type D of ISO 53 takes 0.990. */
    private static final double ROUND_PART = 0.995;

    /** A profile of ISO 53, without relief, well or slot. */
    public static ToothForm of(BasicRack rack, double pitchMm) {
        double module = pitchMm / Math.PI;
        return new ToothForm(pitchMm, BasicRack.FLANK_ANGLE_DEG, BasicRack.ADDENDUM * module, rack.dedendum() * module,
                rack.fillet() * module, 0, 0, 0);
    }

    /**
     * A profile of one's own, without relief, well or slot.
     *
     * @param depthMm from tip to root
     * @param clearanceMm between a tip and the root of the other row
     * @param filletMm radius at the root
     */
    public static ToothForm own(double pitchMm, double flankAngleDeg, double depthMm, double clearanceMm, double filletMm) {
        double addendum = (depthMm - clearanceMm) / 2;
        return new ToothForm(pitchMm, flankAngleDeg, addendum, addendum + clearanceMm, filletMm, 0, 0, 0);
    }

    /** The same tooth with its tip corners rounded off, its gap deepened and a slot in it. */
    public ToothForm eased(double reliefMm, double deeperMm, double slotWidthMm) {
        return new ToothForm(pitchMm, flankAngleDeg, addendumMm, dedendumMm, filletMm, reliefMm, deeperMm, slotWidthMm);
    }

    /** The tangent of the flank angle. */
    double flankTangent() {
        return Math.tan(Math.toRadians(flankAngleDeg));
    }

    /** Thickness of the straight-flanked tooth at a height above the reference line. */
    public double thicknessMm(double heightMm) {
        return pitchMm / 2 - 2 * heightMm * flankTangent();
    }

    /** Width of the tip before it is rounded off. */
    public double tipLandMm() {
        return thicknessMm(addendumMm);
    }

    /** Width of the tip between its roundings. */
    public double flatTipMm() {
        return tipLandMm() - 2 * tipReliefMm / Math.cos(Math.toRadians(flankAngleDeg));
    }

    /** Width of the gap at the root, between sharp corners. */
    public double rootGapMm() {
        return pitchMm - thicknessMm(-dedendumMm);
    }

    /** From tip to root. */
    public double depthMm() {
        return addendumMm + dedendumMm;
    }

    /** Between a tip and the root of the other row, wells left out. */
    public double clearanceMm() {
        return dedendumMm - addendumMm;
    }

    /** The lowest point of a gap, below 0. */
    public double floorMm() {
        return -dedendumMm - wellMm;
    }

    /** Height above the root up to which the fillet takes the straight flank away; 0 where a well lies below the root. */
    public double filletHeightMm() {
        return wellMm > 0 ? 0 : filletMm * (1 - Math.sin(Math.toRadians(flankAngleDeg)));
    }

    /** Radius of the rounding at the tip, tangent to flank and tip. */
    public double tipRadiusMm() {
        double angle = Math.toRadians(flankAngleDeg);
        return tipReliefMm / (Math.cos(angle) * Math.tan((Math.PI / 2 - angle) / 2));
    }

    /** Radius in the corners of the floor of a gap; where a well lies below the root, as much of it as fits in there. */
    public double floorRadiusMm() {
        return wellMm > 0 ? Math.min(filletMm, Math.min(ROUND_PART * rootGapMm() / 2, wellMm)) : filletMm;
    }

    /**
     * The length of a flank that bears on the flank of the other row: between the reliefs of both tips, as far as the
     * fillets leave it.
     */
    public double bearingMm() {
        double top = addendumMm - tipReliefMm;
        double low = -dedendumMm + filletHeightMm();
        double half = Math.min(top, -low);
        return Math.max(0, 2 * half) / Math.cos(Math.toRadians(flankAngleDeg));
    }

    /**
     * The largest fillet that keeps clear of the tip of the other row and fits into the gap (ISO 53:1998, 5.9, the first
     * of its limits below a clearance of 0.295 modules, the second above).
     */
    public static double largestFilletMm(double pitchMm, double flankAngleDeg, double dedendumMm, double clearanceMm) {
        double clearOfTip = clearanceMm / (1 - Math.sin(Math.toRadians(flankAngleDeg)));
        return Math.max(0, Math.min(clearOfTip, fittingFilletMm(pitchMm, flankAngleDeg, dedendumMm)));
    }

    /** The largest fillet that fits into the gap and leaves some floor. */
    double fittingFilletMm() {
        return ROUND_PART * fittingFilletMm(pitchMm, flankAngleDeg, dedendumMm);
    }

    private static double fittingFilletMm(double pitchMm, double flankAngleDeg, double dedendumMm) {
        double angle = Math.toRadians(flankAngleDeg);
        return (pitchMm / 4 - dedendumMm * Math.tan(angle)) / Math.tan((Math.PI / 2 - angle) / 2);
    }

    /** The same tooth with the largest fillet that keeps clear of the tip of the other row and leaves some floor. */
    public ToothForm filleted() {
        double clear = largestFilletMm(pitchMm, flankAngleDeg, dedendumMm, clearanceMm());
        return new ToothForm(pitchMm, flankAngleDeg, addendumMm, dedendumMm, Math.min(clear, fittingFilletMm()), tipReliefMm,
                wellMm, slotMm);
    }
}
