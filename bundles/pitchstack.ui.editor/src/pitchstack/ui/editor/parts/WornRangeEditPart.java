// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import org.eclipse.draw2d.IFigure;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.EditPolicy;
import org.eclipse.gef.Request;
import org.eclipse.gef.editparts.AbstractGraphicalEditPart;
import pitchstack.model.WornRange;
import pitchstack.ui.editor.figures.TipFigure;
import pitchstack.ui.editor.figures.WornRangeFigure;
import pitchstack.ui.editor.places.Scene;

/** Marked teeth of a row. */
public final class WornRangeEditPart extends AbstractGraphicalEditPart {
    private final SideView view;
    private final TipFigure tip = new TipFigure();

    WornRangeEditPart(WornRange range, SideView view) {
        this.view = view;
        setModel(range);
    }

    private WornRange range() {
        return (WornRange) getModel();
    }

    private RowEditPart rowPart() {
        return (RowEditPart) getParent();
    }

    @Override
    protected IFigure createFigure() {
        WornRangeFigure figure = new WornRangeFigure(view.look(), rowPart().rowFigure());
        figure.setToolTip(tip);
        return figure;
    }

    @Override
    protected void createEditPolicies() {
        installEditPolicy(EditPolicy.SELECTION_FEEDBACK_ROLE, new ShowSelection(((WornRangeFigure) getFigure())::setSelected));
    }

    @Override
    public DragTracker getDragTracker(Request request) {
        return rowPart().tracker(this);
    }

    void show(Scene scene, pitchstack.core.stack.WornRange marked) {
        ((WornRangeFigure) getFigure()).show(scene, marked);
        tip.setText(MarkWords.of(range()) + (range().getNote() == null ? "" : "\n" + range().getNote()));
    }
}
