// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import java.util.List;
import org.eclipse.draw2d.IFigure;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.EditPolicy;
import org.eclipse.gef.Request;
import org.eclipse.gef.requests.SelectionRequest;
import org.eclipse.gef.tools.SelectEditPartTracker;
import pitchstack.core.check.Place;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.RowSpec;
import pitchstack.model.PitchstackPackage.Literals;
import pitchstack.model.Row;
import pitchstack.model.WornRange;
import pitchstack.ui.editor.figures.RowFigure;
import pitchstack.ui.editor.places.Scene;

/** A row of teeth. Pressing it selects it, dragging it moves the body it is on, and dragging with Shift held marks teeth. */
public final class RowEditPart extends SpokenEditPart implements Tipped {
    private final SideView view;

    RowEditPart(Row row, SideView view) {
        this.view = view;
        setModel(row);
    }

    /** The row. */
    public Row row() {
        return (Row) getModel();
    }

    /** Whether it is the base row of its stage. */
    public boolean isBase() {
        return row().eContainmentFeature() == Literals.STAGE__BASE_ROW;
    }

    @Override
    protected IFigure createFigure() {
        return new RowFigure(view.look(), isBase());
    }

    RowFigure rowFigure() {
        return (RowFigure) getFigure();
    }

    @Override
    protected List<WornRange> getModelChildren() {
        return row().getWorn();
    }

    @Override
    protected void createEditPolicies() {
        installEditPolicy(EditPolicy.SELECTION_FEEDBACK_ROLE, new ShowSelection(rowFigure()::setSelected));
        installEditPolicy(RowEnds.ROLE, new RowEnds(view));
    }

    @Override
    public DragTracker getDragTracker(Request request) {
        return tracker(this, request);
    }

    /** With Shift held, draws over teeth to mark them; else as {@link #tracker(EditPart)}. */
    DragTracker tracker(EditPart pressed, Request request) {
        return request instanceof SelectionRequest selection && selection.isShiftKeyPressed()
                ? new MarkTracker(pressed, this, view) : tracker(pressed);
    }

    /** Selects a part of this row, and drags the body that the row is on; the base stays. */
    private DragTracker tracker(EditPart pressed) {
        StageEditPart stage = (StageEditPart) getParent();
        int body = stage.number() + (isBase() ? 0 : 1);
        return body == 0 ? new SelectEditPartTracker(pressed)
                : new StageDragTracker(pressed, (StageEditPart) stage.getParent().getChildren().get(body - 1), view);
    }

    @Override
    String spoken() {
        return tip().replace("\n", "; ");
    }

    @Override
    public String tip() {
        return (isBase() ? "Base row of " : "Rider row of ") + ((StageEditPart) getParent()).stage().getName() + ", "
                + row().getTeeth() + " teeth"
                + ((StageEditPart) getParent()).found().of(isBase() ? Place.Part.BASE_ROW : Place.Part.RIDER_ROW).lines();
    }

    void show(Scene scene, int number) {
        rowFigure().show(scene, number);
        RowPair rows = scene.spec().stages().get(number).rows();
        RowSpec spec = isBase() ? rows.base() : rows.rider();
        List<?> marks = getChildren();
        for (int i = 0; i < Math.min(marks.size(), spec.worn().size()); i++) {
            ((WornRangeEditPart) marks.get(i)).show(scene, spec.worn().get(i));
        }
    }
}
