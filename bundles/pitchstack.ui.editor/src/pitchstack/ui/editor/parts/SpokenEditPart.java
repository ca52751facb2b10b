// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import org.eclipse.gef.AccessibleEditPart;
import org.eclipse.gef.editparts.AbstractGraphicalEditPart;
import org.eclipse.swt.accessibility.AccessibleEvent;

/** A part of the drawing that has a name for those who hear the screen instead of seeing it. */
abstract class SpokenEditPart extends AbstractGraphicalEditPart {
    private AccessibleEditPart accessible;

    /** What is said of it: one sentence, never empty. */
    abstract String spoken();

    @Override
    protected AccessibleEditPart getAccessibleEditPart() {
        if (accessible == null) {
            accessible = new Spoken();
        }
        return accessible;
    }

    private final class Spoken extends AccessibleGraphicalEditPart {
        @Override
        public void getName(AccessibleEvent event) {
            event.result = spoken();
        }
    }
}
