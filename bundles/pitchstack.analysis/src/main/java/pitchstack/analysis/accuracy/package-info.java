// SPDX-License-Identifier: EPL-2.0
/**
 * From the model to how well a position is known, and back: what a file says of the making, holding and measuring of an axis
 * as numbers, with a sentence for everything that had to be assumed; runs as readings and visits; the fit of a run, and its
 * corrections as entries of the file.
 */
package pitchstack.analysis.accuracy;
