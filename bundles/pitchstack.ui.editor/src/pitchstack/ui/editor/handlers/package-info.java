// SPDX-License-Identifier: EPL-2.0
/** What the commands of the editor do: each reads the selection and asks for one thing. */
package pitchstack.ui.editor.handlers;
