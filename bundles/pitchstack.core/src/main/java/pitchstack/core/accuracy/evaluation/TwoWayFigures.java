// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.evaluation;

/**
 * The figures of an axis over both directions of approach (ISO 230-2).
 *
 * @param reversalM B: the largest amount of any target's reversal
 * @param meanReversalM B̄: the mean reversal, with its sign
 * @param repeatabilityM R: the largest of any target
 * @param errorM E: the largest mean of either direction less the smallest of either
 * @param meanErrorM M: the largest mean of both directions less the smallest
 * @param accuracyM A: the largest mean + 2s of either direction less the smallest mean − 2s of either
 */
public record TwoWayFigures(double reversalM, double meanReversalM, double repeatabilityM, double errorM,
        double meanErrorM, double accuracyM) { }
