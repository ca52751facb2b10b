// SPDX-License-Identifier: EPL-2.0
/**
 * The Measurements view: runs of readings, how well the carriage comes back, the pitches they tell, and the scale of a print.
 */
package pitchstack.ui.views.runs;

