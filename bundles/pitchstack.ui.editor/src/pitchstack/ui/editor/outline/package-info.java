// SPDX-License-Identifier: EPL-2.0
/** The outline of the active editor's document. */
package pitchstack.ui.editor.outline;
