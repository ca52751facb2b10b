// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

/**
 * How fine the positions lie everywhere.
 *
 * @param spacing the widest spacing of neighbouring positions inside the travel, in counts
 * @param tolerance the smallest tolerance at which every position of the travel is reached, in counts
 */
public record FinestStep(long spacing, long tolerance) {
    /** The worse of both. */
    FinestStep worse(FinestStep other) {
        return new FinestStep(Math.max(spacing, other.spacing), Math.max(tolerance, other.tolerance));
    }
}
