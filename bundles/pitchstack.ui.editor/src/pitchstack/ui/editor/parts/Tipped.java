// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

/** Something drawn that says more when the pointer rests on it. */
interface Tipped {
    /** A few lines. */
    String tip();
}
