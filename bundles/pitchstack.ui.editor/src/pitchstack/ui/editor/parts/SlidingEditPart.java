// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import org.eclipse.gef.DragTracker;
import org.eclipse.gef.EditPolicy;
import org.eclipse.gef.Request;
import pitchstack.ui.editor.figures.SceneFigure;

/** What is marked on the ruler and can be moved along it. */
abstract class SlidingEditPart extends SpokenEditPart implements Tipped, Sliding {
    private final SideView view;

    SlidingEditPart(Object model, SideView view) {
        this.view = view;
        setModel(model);
    }

    final SideView view() {
        return view;
    }

    @Override
    protected void createEditPolicies() {
        installEditPolicy(EditPolicy.SELECTION_FEEDBACK_ROLE, new ShowSelection(((SceneFigure) getFigure())::setSelected));
    }

    @Override
    public DragTracker getDragTracker(Request request) {
        return new SlideTracker(this, view);
    }

    @Override
    String spoken() {
        return tip();
    }
}
