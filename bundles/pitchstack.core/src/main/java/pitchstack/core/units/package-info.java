// SPDX-License-Identifier: EPL-2.0
/**
 * Lengths and angles as whole numbers, and the words people type for them.
 *
 * <p>Inside the program a position is a {@code long} count of the unit of its axis: femtometres on a linear axis, a
 * division of one turn on a rotary one. Sums and comparisons are therefore exact. Text becomes such a count only in
 * {@link pitchstack.core.units.Scale#parse}, and a count becomes text only in its {@code format} methods.
 */
package pitchstack.core.units;
