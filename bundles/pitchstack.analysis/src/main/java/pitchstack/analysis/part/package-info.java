// SPDX-License-Identifier: EPL-2.0
/** Rows of the model as parts to make. */
package pitchstack.analysis.part;
