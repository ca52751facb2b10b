// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.evaluation;

/**
 * The figures of an axis in one direction of approach (ISO 230-2: with an arrow up or down).
 *
 * @param repeatabilityM R: the largest 4s of any target
 * @param errorM E: the largest mean less the smallest
 * @param accuracyM A: the largest mean + 2s less the smallest mean − 2s
 */
public record OneWayFigures(double repeatabilityM, double errorM, double accuracyM) { }
