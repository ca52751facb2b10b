// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.runs;

import org.eclipse.swt.widgets.Control;
import pitchstack.analysis.accuracy.RunStudy;

/** A page of the view. */
interface RunPage {
    /** The control to show. */
    Control control();

    /** Shows the run that is chosen, as the document stands; what follows from it comes later. */
    void show(Runs runs);

    /** Shows what was worked out of it. */
    void found(RunStudy study);

    /** Says why there is nothing to show. */
    void say(String sentence);

    /** Puts the focus where one would begin. */
    void setFocus();
}
