// SPDX-License-Identifier: EPL-2.0
/** The drawing outside of its window: on the clipboard and on paper. */
package pitchstack.ui.editor.pictures;
