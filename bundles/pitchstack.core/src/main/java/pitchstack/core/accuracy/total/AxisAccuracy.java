// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.total;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import pitchstack.core.accuracy.material.Expansion;
import pitchstack.core.accuracy.thermal.Temperature;

/**
 * How well an axis is made, measured and placed.
 *
 * @param stages lowest first
 * @param sharedScale correlation of the scales of rows of one set-up, from 0 to 1; near 1 for parts printed together
 * @param fitted what a run of measurements says, where there was one; it takes the place of what is believed of base rows
 * @param datumM standard uncertainty of the datum, at least 0
 * @param temperature of the axis; its effect is taken to be corrected, so that only what is not known of it counts
 * @param work the expansion of what is placed, which grows too, where it counts
 * @param rotary whether warmth makes no difference
 */
public record AxisAccuracy(List<StageAccuracy> stages, double sharedScale, Optional<Fitted> fitted, double datumM,
        Temperature temperature, Optional<Expansion> work, boolean rotary) {
    /**
     * Pitches from a run.
     *
     * @param covariances of the relative pitch corrections, stages in order
     * @param degreesOfFreedom of the run
     * @param stages those whose pitch was fitted, counted from the lowest, 0; covariances of others mean nothing
     */
    public record Fitted(double[][] covariances, double degreesOfFreedom, Set<Integer> stages) {
        /** Copies the set. */
        public Fitted {
            stages = Set.copyOf(stages);
        }

        /** The pitch of every stage was fitted. */
        public Fitted(double[][] covariances, double degreesOfFreedom) {
            this(covariances, degreesOfFreedom,
                    IntStream.range(0, covariances.length).boxed().collect(Collectors.toUnmodifiableSet()));
        }
    }

    /** Copies the list and checks the numbers. */
    public AxisAccuracy {
        stages = List.copyOf(stages);
        if (!(sharedScale >= 0 && sharedScale <= 1 && datumM >= 0)) {
            throw new IllegalArgumentException("A correlation of scales is from 0 to 1 and a datum's uncertainty at least 0,"
                    + " not " + sharedScale + " and " + datumM);
        }
    }

    /** Nothing measured: every base row as it is believed to be. */
    public AxisAccuracy unmeasured() {
        return new AxisAccuracy(stages, sharedScale, Optional.empty(), datumM, temperature, work, rotary);
    }
}
