// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.teeth;

/**
 * The seat between two flanks of stiffness 1 the other way: Newton's method on the energy, with the set of flanks that bear
 * taken anew at each step and the step halved until the energy falls. Slow and without insight, which is why it is a check.
 */
final class ActiveSet {
    private static final int STEPS = 10_000;

    double x;
    double z;
    private final double[] left;
    private final double[] right;
    private final double cos;
    private final double sin;
    private final double travel;
    private final double preload;
    /** Second derivatives of the energy, and what is left of the forces. */
    private double xx;
    private double xz;
    private double zz;
    private double fx;
    private double fz;

    ActiveSet(double[] left, double[] right, double alpha, double travel, double preload) {
        this.left = left;
        this.right = right;
        cos = Math.cos(alpha);
        sin = Math.sin(alpha);
        this.travel = travel;
        this.preload = preload;
        z = 100;
    }

    private double energy(double atX, double atZ) {
        double energy = -travel * atX - preload * atZ;
        for (int i = 0; i < left.length; i++) {
            energy += Math.pow(Math.max(0, (atX - left[i]) * cos + atZ * sin), 2) / 2;
            energy += Math.pow(Math.max(0, -(atX - right[i]) * cos + atZ * sin), 2) / 2;
        }
        return energy;
    }

    private void add(double gap, double side) {
        if (gap > 0) {
            xx += cos * cos;
            zz += sin * sin;
            xz += side * cos * sin;
            fx -= side * cos * gap;
            fz -= sin * gap;
        }
    }

    private void gather() {
        xx = 0;
        xz = 0;
        zz = 0;
        fx = travel;
        fz = preload;
        for (int i = 0; i < left.length; i++) {
            add((x - left[i]) * cos + z * sin, 1);
            add(-(x - right[i]) * cos + z * sin, -1);
        }
    }

    void solve() {
        for (int step = 0; step < STEPS; step++) {
            gather();
            double damping = 1e-12 * (1 + xx);
            double determinant = (xx + damping) * (zz + damping) - xz * xz;
            double dx = ((zz + damping) * fx - xz * fz) / determinant;
            double dz = ((xx + damping) * fz - xz * fx) / determinant;
            double length = 1;
            while (length > 1e-12 && energy(x + length * dx, z + length * dz) > energy(x, z)) {
                length /= 2;
            }
            x += length * dx;
            z += length * dz;
            if (Math.hypot(dx, dz) < 1e-11) {
                return;
            }
        }
    }

    /** Along the travel, free to give way in depth. */
    double stiffness() {
        gather();
        return xx - xz * xz / zz;
    }
}
