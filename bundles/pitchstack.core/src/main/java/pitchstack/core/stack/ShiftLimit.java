// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.stack;

/**
 * How far one body may stand off another below it, against tipping: the sum of {@link StageSpec#offset}, measured errors
 * of the indices included, over the stages between them stays within ± the limit. It is the body's true place that tips.
 *
 * @param lowest the lowest stage that counts
 * @param highest the highest stage that counts, at least {@code lowest}
 * @param limit counts of the scale, at least 0
 */
public record ShiftLimit(int lowest, int highest, long limit) { }
