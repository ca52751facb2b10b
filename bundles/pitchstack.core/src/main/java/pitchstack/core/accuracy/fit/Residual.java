// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.fit;

/**
 * What a fit leaves of one reading.
 *
 * @param reading the reading
 * @param residualM reading less fit
 * @param leverage how much of its own fitted value the reading makes, from 0 to 1
 * @param studentized the residual over its own standard deviation, both from a fit without this reading; NaN where the
 *     fit needs it
 * @param outlier whether it is larger than chance explains: at 5 % for the run as a whole (Bonferroni)
 */
public record Residual(Reading reading, double residualM, double leverage, double studentized, boolean outlier) { }
