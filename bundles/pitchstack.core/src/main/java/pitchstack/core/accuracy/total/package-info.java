// SPDX-License-Identifier: EPL-2.0
/**
 * All of it together: the uncertainty of the position of a setting of a stack, from the datum, with what repeats told from
 * what does not.
 */
package pitchstack.core.accuracy.total;
