// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import org.eclipse.draw2d.IFigure;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.EditPolicy;
import org.eclipse.gef.Request;
import org.eclipse.gef.tools.SelectEditPartTracker;
import pitchstack.core.units.QuantityException;
import pitchstack.model.Target;
import pitchstack.ui.editor.figures.TargetFigure;
import pitchstack.ui.editor.places.Scene;

/** A target, marked on the ruler. */
public final class TargetEditPart extends SpokenEditPart implements Tipped {
    private final SideView view;

    TargetEditPart(Target target, SideView view) {
        this.view = view;
        setModel(target);
    }

    private Target target() {
        return (Target) getModel();
    }

    private TargetFigure drawn() {
        return (TargetFigure) getFigure();
    }

    @Override
    protected IFigure createFigure() {
        return new TargetFigure(view.look());
    }

    @Override
    protected void createEditPolicies() {
        installEditPolicy(EditPolicy.SELECTION_FEEDBACK_ROLE, new ShowSelection(drawn()::setSelected));
    }

    @Override
    public DragTracker getDragTracker(Request request) {
        return new SelectEditPartTracker(this);
    }

    @Override
    String spoken() {
        return tip();
    }

    @Override
    public String tip() {
        return "Target " + (target().getName() == null ? "" : "“" + target().getName() + "” ") + "at " + target().getPosition();
    }

    /** A position that cannot be read is nowhere; the Findings view says so. */
    void show(Scene scene) {
        try {
            drawn().show(scene, scene.spec().scale().parse(target().getPosition() == null ? "" : target().getPosition()));
        } catch (QuantityException unreadable) {
            drawn().setVisible(false);
        }
    }
}
