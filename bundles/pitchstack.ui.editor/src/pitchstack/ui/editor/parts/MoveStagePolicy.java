// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.Request;
import org.eclipse.gef.RequestConstants;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.editpolicies.GraphicalEditPolicy;
import org.eclipse.gef.requests.ChangeBoundsRequest;
import pitchstack.core.stack.Setting;
import pitchstack.edit.MoveStage;
import pitchstack.ui.editor.figures.TipFigure;
import pitchstack.ui.editor.places.Guides;
import pitchstack.ui.editor.places.Scene;
import pitchstack.ui.editor.places.StageTravel;

/** Turns the drag of a stage into whole teeth: shown while it lasts, an edit at its end. */
final class MoveStagePolicy extends GraphicalEditPolicy {
    private static final int TIP_ABOVE = 44;
    private static final int TIP_BESIDE = 14;

    private final SideView view;
    private final GuideMark guides;
    private TipFigure tip;

    MoveStagePolicy(SideView view) {
        this.view = view;
        guides = new GuideMark(view, this::getLayer);
    }

    @Override
    public EditPart getTargetEditPart(Request request) {
        return understandsRequest(request) ? getHost() : null;
    }

    @Override
    public boolean understandsRequest(Request request) {
        return RequestConstants.REQ_MOVE.equals(request.getType());
    }

    @Override
    public Command getCommand(Request request) {
        if (!understandsRequest(request)) {
            return null;
        }
        int index = settled((ChangeBoundsRequest) request);
        return index == part().stage().getIndex() ? null : new EditCommand(new MoveStage(part().stage(), index));
    }

    @Override
    public void showSourceFeedback(Request request) {
        if (!understandsRequest(request)) {
            return;
        }
        int index = settled((ChangeBoundsRequest) request);
        Setting shown = view.session().analysis().current().with(part().number(), index);
        if (!shown.equals(view.session().shown())) {
            view.session().preview(shown);
        }
        showTip((ChangeBoundsRequest) request, index);
    }

    @Override
    public void eraseSourceFeedback(Request request) {
        if (!understandsRequest(request)) {
            return;
        }
        guides.hide();
        if (tip != null) {
            getLayer(LayerConstants.FEEDBACK_LAYER).remove(tip);
            tip = null;
        }
        if (view.session().preview().isPresent()) {
            view.session().preview(null);
        }
    }

    private StageEditPart part() {
        return (StageEditPart) getHost();
    }

    private int settled(ChangeBoundsRequest request) {
        return new StageTravel(part().rows()).settle(part().stage().getIndex(), pointed(request));
    }

    /** The index under the pointer, usable or not. */
    private int pointed(ChangeBoundsRequest request) {
        double pitchPx = view.pitchPx(part().number());
        return pitchPx <= 0 ? part().stage().getIndex()
                : (int) Math.round(part().stage().getIndex() + request.getMoveDelta().x / pitchPx);
    }

    /** The rows of the moved body over those below it and over the marks of the axis, and the carriage over these. */
    private List<String> inLine() {
        Scene scene = view.scene();
        int body = part().number() + 1;
        Guides all = StayingLines.of(view, scene, below -> below < body);
        List<Guides.Line> moved = new ArrayList<>(Guides.rows(scene.spec(), scene.places(), other -> other == body));
        moved.add(new Guides.Line(scene.places().carriage(), "the carriage"));
        return guides.show(scene, new Guides(all.scale(), all.fixed(), moved));
    }

    private void showTip(ChangeBoundsRequest request, int index) {
        if (tip == null) {
            tip = new TipFigure();
            getLayer(LayerConstants.FEEDBACK_LAYER).add(tip);
        }
        StageWords words = new StageWords(part().stage(), part().rows(), index);
        String obstacle = words.obstacle(pointed(request));
        String beyond = StageWords.beyond(view.session().analysis().spec(), view.session().shown());
        tip.setText(GuideMark.words("index " + StageWords.signed(index) + "   " + view.position()
                + (obstacle.isEmpty() ? "" : "\n" + obstacle) + (beyond.isEmpty() ? "" : "\n" + beyond), inLine()));
        tip.setSize(tip.getPreferredSize());
        Point at = request.getLocation().getCopy();
        tip.translateToRelative(at);
        tip.setLocation(view.inSight(at.translate(TIP_BESIDE, -TIP_ABOVE), tip.getSize()));
    }
}
