// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.teeth;

/**
 * Where a row comes to rest against one-sided springs.
 *
 * @param positionM along the direction of the force
 * @param bearing how many teeth bear; one that is only just touched counts where its force is above 0
 * @param stiffnessNPerM of all that bear together, for a little more or less force
 */
public record Seat(double positionM, int bearing, double stiffnessNPerM) { }
