// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.teeth;

/**
 * What friction does on flanks that slope by α from the normal of the pitch line: the statics of a wedge.
 *
 * @param coefficient μ, at least 0; dry printed PLA on PLA was measured at 0.6 to 0.8
 */
public record Friction(double coefficient) {
    /** Checks the number. */
    public Friction {
        if (!(coefficient >= 0)) {
            throw new IllegalArgumentException("A coefficient of friction is at least 0, not " + coefficient);
        }
    }

    /** The friction angle atan μ. */
    public double angleRad() {
        return Math.atan(coefficient);
    }

    /** Whether no force along the travel, however large, lifts the row: α is below the friction angle. */
    public boolean locks(double flankAngleRad) {
        return flankAngleRad < angleRad();
    }

    /** The preload needed to hold a force along the travel, as a part of it: tan(α − φ), or 0 where it locks. */
    public double holdDownRatio(double flankAngleRad) {
        return Math.max(0, Math.tan(flankAngleRad - angleRad()));
    }

    /** Which part of the preload reaches the flanks while both slide in: sin α/(sin α + μ·cos α). */
    public double seatingEfficiency(double flankAngleRad) {
        double sin = Math.sin(flankAngleRad);
        return sin / (sin + coefficient * Math.cos(flankAngleRad));
    }

    /**
     * The pull that frees a seated row once the preload is gone, as a part of it: the flanks still push with what reached
     * them, (μ·cos α − sin α)/(sin α + μ·cos α); 0 where it frees itself.
     */
    public double releaseRatio(double flankAngleRad) {
        double sin = Math.sin(flankAngleRad);
        double held = coefficient * Math.cos(flankAngleRad);
        return Math.max(0, (held - sin) / (sin + held));
    }

    /** Whether a row that rests on one flank only stays there, half seated, whatever the preload: μ ≥ cot α. */
    public boolean jams(double flankAngleRad) {
        return coefficient * Math.tan(flankAngleRad) >= 1;
    }
}
