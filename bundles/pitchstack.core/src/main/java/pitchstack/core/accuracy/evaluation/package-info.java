// SPDX-License-Identifier: EPL-2.0
/**
 * What repeated visits say of an axis: the figures of ISO 230-2:2014, and how well it comes back to zero. The definitions
 * are those in common use; the text of the standard itself was not at hand.
 */
package pitchstack.core.accuracy.evaluation;
