// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.teeth;

import pitchstack.core.accuracy.material.Elasticity;

/**
 * A short tapered beam, clamped at the root, loaded across at its end. Bending after Euler and Bernoulli and shear with the
 * factor 6/5 of a rectangle, integrated over the taper; with r = tL/tr, g = (tr − tL)/h:
 * bending 12/(E·b·g³)·[ln(1/r) + 2r − r²/2 − 3/2], shear 1.2·ln(1/r)/(G·b·g).
 *
 * @param heightM from root to load, above 0
 * @param rootM thickness at the root, at least that at the load
 * @param endM thickness at the load, above 0
 * @param widthM above 0
 */
public record Beam(double heightM, double rootM, double endM, double widthM) {
    private static final double SHEAR_FACTOR = 1.2;
    /** Below this taper the bracket is a difference of nearly equal numbers, and its series is used. */
    private static final double SMALL_TAPER = 0.05;
    private static final int SERIES_TERMS = 14;

    /** Checks the numbers. */
    public Beam {
        if (!(heightM > 0 && endM > 0 && rootM >= endM && widthM > 0)) {
            throw new IllegalArgumentException("No such beam: height " + heightM + ", root " + rootM + ", end " + endM
                    + ", width " + widthM);
        }
    }

    private double taper() {
        return 1 - endM / rootM;
    }

    /** Deflection at the load for each newton, by bending, in m/N. */
    public double bendingMPerN(Elasticity material) {
        double u = taper();
        double bracket;
        if (u < SMALL_TAPER) {
            // ln(1/r) + 2r − r²/2 − 3/2 = u³/3 + u⁴/4 + u⁵/5 + … with u = 1 − r; here over u³.
            bracket = 0;
            for (int n = SERIES_TERMS; n >= 0; n--) {
                bracket = bracket * u + 1.0 / (n + 3);
            }
        } else {
            double r = 1 - u;
            bracket = (-Math.log(r) + 2 * r - r * r / 2 - 1.5) / (u * u * u);
        }
        double slenderness = heightM / rootM;
        return 12 * slenderness * slenderness * slenderness * bracket / (material.youngPa() * widthM);
    }

    /** Deflection at the load for each newton, by shear, in m/N. */
    public double shearMPerN(Elasticity material) {
        double u = taper();
        double mean = u == 0 ? 1 : -Math.log1p(-u) / u;
        return SHEAR_FACTOR * heightM / rootM * mean / (material.shearPa() * widthM);
    }

    /**
     * The largest bending stress for each newton, in Pa/N: 6·y/(b·t²) where that is largest, at the root or, in a strong
     * taper, where the tooth is twice as thick as at the load.
     */
    public double stressPaPerN() {
        double growth = (rootM - endM) / heightM;
        double y = growth > 0 ? Math.min(heightM, endM / growth) : heightM;
        double thickness = endM + growth * y;
        return 6 * y / (widthM * thickness * thickness);
    }
}
