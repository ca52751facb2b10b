// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** What stands beside a typed text and is part of the fact. */
interface Beside {
    /** The text to begin with, without what stands beside it. */
    String begin();

    /** Makes the control beside the text. */
    Control control(Composite box, Runnable changed);

    /** The next or the one before of what can be chosen, from the text. */
    void turn(int by);

    /** The whole fact for a text. */
    String whole(String typed);

    /** What a whole fact comes to, in a few words; empty where it cannot be read. */
    String meaning(String whole);
}
