// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.EditPolicy;
import org.eclipse.gef.Request;
import org.eclipse.gef.RequestConstants;
import org.eclipse.gef.requests.SelectionRequest;
import pitchstack.core.stack.RowPair;
import pitchstack.model.Axis;
import pitchstack.model.Row;
import pitchstack.model.Stage;
import pitchstack.ui.editor.figures.StageFigure;
import pitchstack.ui.editor.places.AxisPlaces;
import pitchstack.ui.editor.places.Scene;

/** A stage with the body it moves. */
public final class StageEditPart extends SpokenEditPart implements Tipped {
    private final SideView view;

    StageEditPart(Stage stage, SideView view) {
        this.view = view;
        setModel(stage);
    }

    /** The stage. */
    public Stage stage() {
        return (Stage) getModel();
    }

    int number() {
        return Elements.number(stage());
    }

    RowPair rows() {
        return view.spec().stages().get(number()).rows();
    }

    @Override
    protected IFigure createFigure() {
        return new StageFigure(view.look());
    }

    private StageFigure stageFigure() {
        return (StageFigure) getFigure();
    }

    @Override
    public IFigure getContentPane() {
        return stageFigure().rows();
    }

    @Override
    protected List<Row> getModelChildren() {
        return Stream.of(stage().getBaseRow(), stage().getRiderRow()).filter(Objects::nonNull).toList();
    }

    @Override
    protected void createEditPolicies() {
        installEditPolicy(EditPolicy.SELECTION_FEEDBACK_ROLE, new ShowSelection(stageFigure()::setSelected));
        installEditPolicy(EditPolicy.PRIMARY_DRAG_ROLE, new MoveStagePolicy(view));
        installEditPolicy(ReorderPolicy.REORDER, new ReorderPolicy(view));
    }

    @Override
    public DragTracker getDragTracker(Request request) {
        return new StageDragTracker(this, this, view);
    }

    /** A double click on the label edits the name on its first line, and the pitch below. */
    @Override
    public void performRequest(Request request) {
        if (RequestConstants.REQ_OPEN.equals(request.getType()) && request instanceof SelectionRequest click) {
            Point at = click.getLocation().getCopy();
            stageFigure().translateToRelative(at);
            if (stageFigure().labelContains(at.x, at.y)) {
                ((StackViewer) getViewer()).edit(this, at.y < stageFigure().factsBounds().y ? "name" : "pitch");
            }
        }
    }

    /** Where a fact stands on the label, in the canvas. */
    Rectangle fieldBounds(String fact) {
        Rectangle bounds = fact.equals("name") ? stageFigure().nameBounds() : stageFigure().factsBounds();
        stageFigure().translateToAbsolute(bounds);
        return bounds;
    }

    /** What the checks found on it and its rows. */
    Found found() {
        return Found.at(view.session().analysis().findings(), OptionalInt.of(number()));
    }

    private StageWords words() {
        return new StageWords(stage(), rows(), view.session().shown().index(number()));
    }

    @Override
    String spoken() {
        return words().sentence();
    }

    @Override
    public String tip() {
        return words().tip(found().lines());
    }

    /** Where its body is drawn. */
    Rectangle bodyBounds() {
        return stageFigure().bodyBounds();
    }

    /** @param planned the places after a proposed move, or {@code null} for no move */
    void show(Scene scene, AxisPlaces planned) {
        int number = number();
        if (number < 0 || number >= scene.spec().stages().size()) {
            return;
        }
        boolean carriage = number == ((Axis) stage().eContainer()).getStages().size() - 1;
        stageFigure().show(scene, number, words().name(), carriage ? "carriage" : "", words().label(found()));
        stageFigure().showMove(scene, number, planned);
        for (Object child : getChildren()) {
            ((RowEditPart) child).show(scene, number);
        }
    }
}
