// SPDX-License-Identifier: EPL-2.0
/**
 * Finding the moves: for a target, the reachable setting of least effort, or the nearest positions on both sides and
 * the reason. Everything is exact whole-number arithmetic, and the order among equals is total, so that the answer is
 * the same on every run and machine.
 */
package pitchstack.core.plan;
