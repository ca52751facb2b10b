// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.stack;

/**
 * One mating pair of rows and the body it moves.
 *
 * @param name what people call it
 * @param source where its teeth come from
 * @param nominalPitch counts a tooth as the drawing gives it
 * @param pitch counts a tooth as it is today: fitted, and at today's temperature
 * @param rows the two rows
 * @param cost what a step costs
 */
public record StageSpec(String name, Source source, long nominalPitch, long pitch, RowPair rows, EffortCost cost) { }
