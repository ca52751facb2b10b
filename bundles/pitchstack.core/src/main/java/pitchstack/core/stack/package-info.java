// SPDX-License-Identifier: EPL-2.0
/**
 * A stack in numbers: rows of teeth, the stages they make, and the axis they add up to. These records hold what the
 * drawing says, right or wrong; {@code pitchstack.core.check} says what is wrong, and a planner takes only what is
 * right.
 */
package pitchstack.core.stack;
