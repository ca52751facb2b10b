// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

/**
 * How many settings reach a position within a tolerance.
 *
 * @param clean settings over clean teeth
 * @param worn settings over usable teeth of which some are worn
 */
public record Ways(long clean, long worn) { }
