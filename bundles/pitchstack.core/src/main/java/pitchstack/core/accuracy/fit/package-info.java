// SPDX-License-Identifier: EPL-2.0
/**
 * From readings to numbers: the pitch correction of every stage by weighted least squares with an intercept, what a run
 * cannot tell, outliers, errors of single indices, and the scale of a print.
 */
package pitchstack.core.accuracy.fit;
