// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

/**
 * Neighbouring places to search, both ends included, and the place from which errors are counted. A place is a sum of
 * datum and offsets that has not been brought back into one turn.
 *
 * @param center the target, on a rotary axis in one of its laps
 * @param low the lowest place
 * @param high the highest place, at least {@code low}
 */
record Window(long center, long low, long high) { }
