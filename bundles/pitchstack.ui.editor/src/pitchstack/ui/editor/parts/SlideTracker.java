// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import java.util.List;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.editparts.LayerManager;
import org.eclipse.gef.tools.SelectEditPartTracker;
import pitchstack.ui.editor.places.Scene;

/** Selects a mark on the ruler, and drags it along, from tick to tick or dot to dot. Escape puts it back. */
final class SlideTracker extends SelectEditPartTracker {
    private final Sliding mark;
    private final SideView view;
    private final PlaceMark line;
    private final GuideMark guides;
    private double pressedPx;

    SlideTracker(Sliding mark, SideView view) {
        super(mark);
        this.mark = mark;
        this.view = view;
        LayerManager layers = LayerManager.Helper.find(mark);
        line = new PlaceMark(view, layers::getLayer);
        guides = new GuideMark(view, layers::getLayer);
    }

    @Override
    protected boolean handleButtonDown(int button) {
        pressedPx = mark.getFigure().getBounds().getCenter().x - scrolledX();
        return super.handleButtonDown(button);
    }

    /** The pointer in the drawing. */
    private int scrolledX() {
        return view.scrolled().x + getLocation().x;
    }

    @Override
    protected boolean handleDragStarted() {
        return stateTransition(STATE_DRAG, STATE_DRAG_IN_PROGRESS);
    }

    @Override
    protected boolean handleDragInProgress() {
        if (isInState(STATE_DRAG_IN_PROGRESS)) {
            follow();
            view.edges().scroll(getLocation(), this::followIfDragging);
        }
        return true;
    }

    private void followIfDragging() {
        if (isInState(STATE_DRAG_IN_PROGRESS)) {
            handleDragInProgress();
        }
    }

    private void follow() {
        Scene scene = view.scene();
        Snap snap = Snap.at(scrolledX() + pressedPx, scene, view.dots(), view.standing());
        long position = mark.allowed(snap.position());
        Snap shown = position == snap.position() ? snap : new Snap(position, "");
        mark.showAt(position);
        List<String> inLine = guides.show(scene, StayingLines.of(view, scene).with(scene.place(position), mark.called()));
        int x = (int) Math.round(scene.mapping().px(scene.place(position)));
        Point at = new Point(scrolledX(), view.scrolled().y + getLocation().y);
        line.show(new Rectangle(x - 1, scene.top(), 2, scene.height()), GuideMark.words(shown.words(mark, scene), inLine), at);
        boolean moved = mark.position().isEmpty() || mark.position().getAsLong() != position;
        setCurrentCommand(moved ? new EditCommand(mark.movedTo(position)) : null);
    }

    @Override
    protected boolean handleButtonUp(int button) {
        if (!isInState(STATE_DRAG_IN_PROGRESS)) {
            return super.handleButtonUp(button);
        }
        setState(STATE_TERMINAL);
        erase();
        executeCurrentCommand();
        return true;
    }

    private void erase() {
        line.hide();
        guides.hide();
        view.refresh();
    }

    /** Also reached by Escape. */
    @Override
    public void deactivate() {
        if (isInState(STATE_DRAG_IN_PROGRESS)) {
            erase();
            setState(STATE_INVALID);
        }
        super.deactivate();
    }
}
