// SPDX-License-Identifier: EPL-2.0
/** Documents as files: what an editor is opened on, opening, saving, and the files used last. */
package pitchstack.ui.editor.files;
