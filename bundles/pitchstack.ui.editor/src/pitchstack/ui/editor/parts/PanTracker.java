// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.tools.SelectEditPartTracker;

/** Selects the axis by a click on the empty ground, and moves the view by a drag of it. */
final class PanTracker extends SelectEditPartTracker {
    private final SideView view;
    private Point before = new Point();

    PanTracker(EditPart axis, SideView view) {
        super(axis);
        this.view = view;
    }

    @Override
    protected boolean handleButtonDown(int button) {
        before = view.scrolled();
        return super.handleButtonDown(button);
    }

    @Override
    protected boolean handleDragStarted() {
        return stateTransition(STATE_DRAG, STATE_DRAG_IN_PROGRESS);
    }

    @Override
    protected boolean handleDragInProgress() {
        if (isInState(STATE_DRAG_IN_PROGRESS)) {
            view.scrollTo(before.x - getDragMoveDelta().width, before.y - getDragMoveDelta().height);
        }
        return true;
    }

    @Override
    protected boolean handleButtonUp(int button) {
        return isInState(STATE_DRAG_IN_PROGRESS) ? stateTransition(STATE_DRAG_IN_PROGRESS, STATE_TERMINAL)
                : super.handleButtonUp(button);
    }
}
