// SPDX-License-Identifier: EPL-2.0
/** What can be put on the drawing: the pieces, the bar that offers them, and where a piece goes that is placed somewhere. */
package pitchstack.ui.editor.palette;
