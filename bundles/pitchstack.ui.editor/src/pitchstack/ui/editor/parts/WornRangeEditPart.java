// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import org.eclipse.draw2d.IFigure;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.EditPolicy;
import org.eclipse.gef.Request;
import pitchstack.model.WornRange;
import pitchstack.ui.editor.figures.WornRangeFigure;
import pitchstack.ui.editor.places.Scene;

/** Marked teeth of a row. */
public final class WornRangeEditPart extends SpokenEditPart implements Tipped {
    private final SideView view;

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
        return new WornRangeFigure(view.look(), rowPart().rowFigure());
    }

    @Override
    protected void createEditPolicies() {
        WornRangeFigure drawn = (WornRangeFigure) getFigure();
        installEditPolicy(EditPolicy.SELECTION_FEEDBACK_ROLE, new ShowSelection(drawn::setSelected));
    }

    @Override
    public DragTracker getDragTracker(Request request) {
        return rowPart().tracker(this, request);
    }

    @Override
    String spoken() {
        return tip().replace("\n", ", ");
    }

    @Override
    public String tip() {
        return MarkWords.of(range()) + (range().getNote() == null ? "" : "\n" + range().getNote());
    }

    void show(Scene scene, pitchstack.core.stack.WornRange marked) {
        ((WornRangeFigure) getFigure()).show(scene, marked);
    }
}
