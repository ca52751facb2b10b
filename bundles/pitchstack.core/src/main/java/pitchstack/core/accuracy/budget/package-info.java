// SPDX-License-Identifier: EPL-2.0
/**
 * The uncertainty budget after JCGM 100:2008, the GUM: every contribution with its method, distribution, sensitivity and
 * degrees of freedom, correlated or not, combined, expanded and shared out.
 */
package pitchstack.core.accuracy.budget;
