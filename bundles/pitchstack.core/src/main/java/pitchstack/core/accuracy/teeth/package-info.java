// SPDX-License-Identifier: EPL-2.0
/**
 * Elastic averaging: teeth as one-sided springs of which the high ones bear first. Equilibrium under a preload, laws for
 * many teeth, simulation; stiffness and strength of a tooth; friction. Static, small deflections, no wear, no creep.
 *
 * <p>Signs: a tooth's offset is where along the travel its flank comes to bear; positive forces push towards higher
 * positions, a preload pushes the rows together.
 */
package pitchstack.core.accuracy.teeth;
