// SPDX-License-Identifier: EPL-2.0
/**
 * Between model and figures: which element is drawn by what, and which gesture asks for which edit. GEF's raw lists are
 * cast here and nowhere else.
 */
package pitchstack.ui.editor.parts;
