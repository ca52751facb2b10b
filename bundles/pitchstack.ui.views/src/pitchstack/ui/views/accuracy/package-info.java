// SPDX-License-Identifier: EPL-2.0
/**
 * The Accuracy view: what an axis should hold, as a budget, along its travel, by the preload of its teeth, and with
 * warmth. Pages read from the file what it says, and each has one press away what was assumed and where its formulas
 * come from.
 */
package pitchstack.ui.views.accuracy;
