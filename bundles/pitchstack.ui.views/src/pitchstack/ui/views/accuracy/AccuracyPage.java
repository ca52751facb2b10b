// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.accuracy;

import org.eclipse.swt.widgets.Control;

/** One page of the view. */
interface AccuracyPage {
    /** What to lay out. */
    Control control();

    /** Shows an axis, or the same after a change. */
    void show(Looked looked);

    /** Ends all work until something is shown again. */
    void rest();

    /** Puts the focus where a person begins. */
    void setFocus();
}
