// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.evaluation;

import java.util.Optional;

/**
 * What ISO 230-2 says of one target.
 *
 * @param targetM where the carriage was meant to stand
 * @param up of the visits from lower positions, where there were any
 * @param down of the visits from higher positions, where there were any
 */
public record TargetFigures(double targetM, Optional<Spread> up, Optional<Spread> down) {
    /** Whether it was visited from both sides. */
    public boolean isTwoWay() {
        return up.isPresent() && down.isPresent();
    }

    /**
     * B: the mean from below less the mean from above.
     *
     * @throws java.util.NoSuchElementException if it was not visited from both sides, as for the figures below
     */
    public double reversalM() {
        return up.orElseThrow().meanM() - down.orElseThrow().meanM();
    }

    /** x̄: the mean of the means of both sides. */
    public double meanM() {
        return (up.orElseThrow().meanM() + down.orElseThrow().meanM()) / 2;
    }

    /** R: the larger of 2s↑ + 2s↓ + |B| and either 4s. */
    public double repeatabilityM() {
        Spread below = up.orElseThrow();
        Spread above = down.orElseThrow();
        double both = 2 * below.deviationM() + 2 * above.deviationM() + Math.abs(reversalM());
        return Math.max(both, Math.max(below.repeatabilityM(), above.repeatabilityM()));
    }
}
