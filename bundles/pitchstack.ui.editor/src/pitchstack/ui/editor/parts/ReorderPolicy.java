// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import java.util.List;
import java.util.OptionalInt;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.Request;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.editpolicies.GraphicalEditPolicy;
import org.eclipse.gef.requests.ChangeBoundsRequest;
import pitchstack.edit.ReorderStage;
import pitchstack.model.Axis;
import pitchstack.model.Stage;
import pitchstack.ui.editor.places.Scene;

/** Turns the drag of a stage up or down into another place in its stack. */
final class ReorderPolicy extends GraphicalEditPolicy {
    /** The type of the request, and the role of this policy. */
    static final String REORDER = "reorder";

    private final SideView view;
    private final PlaceMark mark;

    ReorderPolicy(SideView view) {
        this.view = view;
        mark = new PlaceMark(view, this::getLayer);
    }

    @Override
    public boolean understandsRequest(Request request) {
        return REORDER.equals(request.getType());
    }

    private Stage stage() {
        return ((StageEditPart) getHost()).stage();
    }

    private Point at(Request request) {
        Point at = ((ChangeBoundsRequest) request).getLocation().getCopy();
        getHostFigure().translateToRelative(at);
        return at;
    }

    /** The new place, counted without the stage itself; empty where it stands already. */
    private OptionalInt place(int gap) {
        int from = Elements.number(stage());
        int to = gap > from ? gap - 1 : gap;
        return to == from ? OptionalInt.empty() : OptionalInt.of(to);
    }

    @Override
    public Command getCommand(Request request) {
        if (!understandsRequest(request)) {
            return null;
        }
        OptionalInt to = place(view.scene().bands().gap(at(request).y));
        return to.isEmpty() ? null : new EditCommand(new ReorderStage(stage(), to.getAsInt()), stage());
    }

    @Override
    public void showSourceFeedback(Request request) {
        if (!understandsRequest(request)) {
            return;
        }
        Point at = at(request);
        Scene scene = view.scene();
        int gap = scene.bands().gap(at.y);
        int y = scene.bands().gapY(gap);
        mark.show(new Rectangle(scene.left(), y - 2, scene.width(), 4), words(gap), at);
    }

    private String words(int gap) {
        if (place(gap).isEmpty()) {
            return "stays where it is";
        }
        List<Stage> stages = ((Axis) stage().eContainer()).getStages();
        return gap == 0 ? "to the base" : "on “" + stages.get(gap - 1).getName() + "”";
    }

    @Override
    public void eraseSourceFeedback(Request request) {
        if (understandsRequest(request)) {
            mark.hide();
        }
    }
}
