// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.teeth;

import pitchstack.core.accuracy.material.Elasticity;

/**
 * How the ground a tooth stands on gives way: for stubby teeth as much as the tooth itself. The form is that of O'Donnell
 * as used by Cornell (1981); its coefficients were not confirmed in the source. Cornell states it along a load normal to the
 * flank, with cos² α; across the tooth, load and deflection both, that factor drops out.
 */
public final class RootBase {
    private RootBase() {
    }

    /**
     * Deflection at the load for each newton across, in m/N.
     *
     * @param beam the tooth
     * @param flankAngleRad of the loaded flank
     */
    public static double deflectionMPerN(Beam beam, double flankAngleRad, Elasticity material) {
        double h = beam.heightM() / beam.rootM();
        double tan = Math.tan(flankAngleRad);
        double nu = material.poisson();
        return 1 / (material.youngPa() * beam.widthM())
                * (5.306 * h * h + 2 * (1 - nu) * h + 1.534 * (1 + 0.4167 * tan * tan / (1 + nu)));
    }
}
