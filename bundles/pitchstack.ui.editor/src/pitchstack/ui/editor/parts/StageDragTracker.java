// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.RequestConstants;
import org.eclipse.gef.requests.ChangeBoundsRequest;
import org.eclipse.gef.tools.SelectEditPartTracker;

/**
 * Selects what was pressed, and drags the body that it is part of along the axis, or up and down to another place of the
 * stack, whichever way the drag begins. Escape puts the body back. Near the
 * sides of the window the drawing scrolls along.
 */
final class StageDragTracker extends SelectEditPartTracker {
    private final StageEditPart moved;
    private final SideView view;
    private final ChangeBoundsRequest request = new ChangeBoundsRequest(RequestConstants.REQ_MOVE);
    private final ChangeBoundsRequest reorder = new ChangeBoundsRequest(ReorderPolicy.REORDER);
    private int scrolledBefore;
    private boolean upOrDown;

    /**
     * @param pressed what is selected
     * @param moved the stage whose body is moved
     * @param view the view it is in
     */
    StageDragTracker(EditPart pressed, StageEditPart moved, SideView view) {
        super(pressed);
        this.moved = moved;
        this.view = view;
        request.setEditParts(moved);
        reorder.setEditParts(moved);
    }

    @Override
    protected String getCommandName() {
        return RequestConstants.REQ_MOVE;
    }

    @Override
    protected boolean handleButtonDown(int button) {
        scrolledBefore = view.scrolled().x;
        return super.handleButtonDown(button);
    }

    @Override
    protected boolean handleDragStarted() {
        // Decided once, so that a stage that is moved along does not jump to another place by a shaky hand.
        upOrDown = Math.abs(getDragMoveDelta().height) > Math.abs(getDragMoveDelta().width);
        return stateTransition(STATE_DRAG, STATE_DRAG_IN_PROGRESS);
    }

    @Override
    protected boolean handleDragInProgress() {
        if (isInState(STATE_DRAG_IN_PROGRESS)) {
            follow();
            if (!upOrDown && view.edges().edge(getStartLocation()) == 0) {
                view.edges().scroll(getLocation(), this::followIfDragging);
            }
        }
        return true;
    }

    private void followIfDragging() {
        if (isInState(STATE_DRAG_IN_PROGRESS)) {
            handleDragInProgress();
        }
    }

    private void follow() {
        if (upOrDown) {
            reorder.setLocation(getLocation());
            moved.showSourceFeedback(reorder);
            setCurrentCommand(moved.getCommand(reorder));
            return;
        }
        Point delta = new Point(getDragMoveDelta().width + view.scrolled().x - scrolledBefore, 0);
        request.setMoveDelta(delta);
        request.setLocation(getLocation());
        moved.showSourceFeedback(request);
        setCurrentCommand(moved.getCommand(request));
    }

    @Override
    protected boolean handleButtonUp(int button) {
        if (!isInState(STATE_DRAG_IN_PROGRESS)) {
            return super.handleButtonUp(button);
        }
        setState(STATE_TERMINAL);
        if (upOrDown) {
            moved.eraseSourceFeedback(reorder);
            executeCurrentCommand();
        } else {
            executeCurrentCommand();
            moved.eraseSourceFeedback(request);
        }
        return true;
    }

    /** Also reached by Escape. */
    @Override
    public void deactivate() {
        if (isInState(STATE_DRAG_IN_PROGRESS)) {
            moved.eraseSourceFeedback(upOrDown ? reorder : request);
            setState(STATE_INVALID);
        }
        super.deactivate();
    }
}
