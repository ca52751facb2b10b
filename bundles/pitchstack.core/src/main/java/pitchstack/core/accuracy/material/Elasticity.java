// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.material;

/**
 * How a material gives way.
 *
 * @param youngPa modulus of elasticity E, above 0
 * @param poisson ratio ν, from 0 up to 0.5
 */
public record Elasticity(double youngPa, double poisson) {
    /** Checks the numbers. */
    public Elasticity {
        if (!(youngPa > 0 && poisson >= 0 && poisson <= 0.5)) {
            throw new IllegalArgumentException("E is above 0 and Poisson's ratio from 0 to 0.5, not " + youngPa + " and "
                    + poisson);
        }
    }

    /** The shear modulus E/2(1 + ν). */
    public double shearPa() {
        return youngPa / (2 * (1 + poisson));
    }
}
