// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry;

/**
 * The basic rack tooth profiles of ISO 53:1998, in modules: flank angle 20°, addendum 1. The figures are those of public
 * code that cites the standard; its table itself was not at hand.
 */
public enum BasicRack {
    /** For high torque. */
    A(1.25, 0.38),
    /** For normal service. */
    B(1.25, 0.30),
    /** For normal service, cut with a standard hob. */
    C(1.25, 0.25),
    /** Full fillet, for high precision. */
    D(1.40, 0.39);

    /** The angle of a flank against the line across the row. */
    public static final double FLANK_ANGLE_DEG = 20;
    /** From the reference line to the tip, in modules. */
    public static final double ADDENDUM = 1;

    private final double dedendum;
    private final double fillet;

    BasicRack(double dedendum, double fillet) {
        this.dedendum = dedendum;
        this.fillet = fillet;
    }

    /** From the reference line to the root, in modules. */
    public double dedendum() {
        return dedendum;
    }

    /** Radius of the fillet at the root, in modules. */
    public double fillet() {
        return fillet;
    }
}
