// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import org.eclipse.draw2d.RectangleFigure;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.editparts.LayerManager;
import org.eclipse.gef.tools.SelectEditPartTracker;
import pitchstack.core.stack.ToothSpan;
import pitchstack.edit.ToothMark;
import pitchstack.ui.editor.figures.TipFigure;
import pitchstack.ui.editor.places.Extent;
import pitchstack.ui.editor.places.RowPlace;

/** Draws over teeth of a row, from where the mouse is pressed to where it is let go. Escape leaves all as it was. */
final class MarkTracker extends SelectEditPartTracker {
    private static final int TIP_ABOVE = 34;
    private static final int TIP_BESIDE = 14;

    private final RowEditPart row;
    private final SideView view;
    private final RectangleFigure frame = new RectangleFigure();
    private final TipFigure tip = new TipFigure();
    private int anchor;

    /**
     * @param pressed what is selected by the press
     * @param row the row whose teeth are drawn over
     * @param view the view it is in
     */
    MarkTracker(EditPart pressed, RowEditPart row, SideView view) {
        super(pressed);
        this.row = row;
        this.view = view;
        frame.setFill(false);
        frame.setLineWidth(2);
        frame.setForegroundColor(view.look().selection());
    }

    /** Shift adds nothing to the selection here. */
    @Override
    protected void performSelection() {
        getCurrentViewer().select(getSourceEditPart());
    }

    @Override
    protected boolean handleButtonDown(int button) {
        anchor = tooth();
        return super.handleButtonDown(button);
    }

    @Override
    protected boolean handleDragStarted() {
        return stateTransition(STATE_DRAG, STATE_DRAG_IN_PROGRESS);
    }

    @Override
    protected boolean handleDragInProgress() {
        if (isInState(STATE_DRAG_IN_PROGRESS)) {
            show();
            view.edges().scroll(getLocation(), this::showIfDragging);
        }
        return true;
    }

    private void showIfDragging() {
        if (isInState(STATE_DRAG_IN_PROGRESS)) {
            handleDragInProgress();
        }
    }

    @Override
    protected boolean handleButtonUp(int button) {
        if (!isInState(STATE_DRAG_IN_PROGRESS)) {
            return super.handleButtonUp(button);
        }
        setState(STATE_TERMINAL);
        erase();
        view.mark(row.row(), teeth());
        return true;
    }

    /** Also reached by Escape. */
    @Override
    public void deactivate() {
        erase();
        super.deactivate();
    }

    private RowPlace place() {
        return row.rowFigure().row();
    }

    private int tooth() {
        return place().toothAt(view.scene().mapping().place(view.scrolled().x + (double) getLocation().x));
    }

    private ToothSpan teeth() {
        int now = tooth();
        return new ToothSpan(Math.min(anchor, now), Math.max(anchor, now));
    }

    private void show() {
        if (frame.getParent() == null) {
            LayerManager.Helper.find(row).getLayer(LayerConstants.FEEDBACK_LAYER).add(frame);
            LayerManager.Helper.find(row).getLayer(LayerConstants.FEEDBACK_LAYER).add(tip);
        }
        ToothSpan teeth = teeth();
        Extent px = view.scene().mapping().px(place().extent(teeth));
        Rectangle bounds = row.rowFigure().getBounds();
        frame.setBounds(new Rectangle((int) Math.floor(px.from()) - 1, bounds.y, (int) Math.ceil(px.length()) + 2,
                bounds.height));
        tip.setText((row.isBase() ? "base row, " : "rider row, ") + ToothMark.words(teeth.first(), teeth.last()));
        tip.setSize(tip.getPreferredSize());
        Point at = getLocation().getCopy();
        tip.translateToRelative(at);
        tip.setLocation(view.inSight(at.translate(TIP_BESIDE, -TIP_ABOVE), tip.getSize()));
    }

    private void erase() {
        if (frame.getParent() != null) {
            frame.getParent().remove(frame);
            tip.getParent().remove(tip);
        }
    }
}
