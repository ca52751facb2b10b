// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import org.eclipse.gef.EditPart;
import org.eclipse.gef.EditPartFactory;
import pitchstack.model.Axis;
import pitchstack.model.Row;
import pitchstack.model.Stage;
import pitchstack.model.Target;
import pitchstack.model.WornRange;

/** Which element of a document is drawn by what. */
final class StackPartFactory implements EditPartFactory {
    private final SideView view;

    StackPartFactory(SideView view) {
        this.view = view;
    }

    @Override
    public EditPart createEditPart(EditPart context, Object model) {
        if (model instanceof Axis axis) {
            return new AxisEditPart(axis, view);
        }
        if (model instanceof Stage stage) {
            return new StageEditPart(stage, view);
        }
        if (model instanceof Row row) {
            return new RowEditPart(row, view);
        }
        if (model instanceof WornRange range) {
            return new WornRangeEditPart(range, view);
        }
        if (model instanceof Target target) {
            return new TargetEditPart(target, view);
        }
        if (model instanceof StopMark stop) {
            return new StopEditPart(stop, view);
        }
        if (model instanceof ZeroMark zero) {
            return new ZeroEditPart(zero, view);
        }
        throw new IllegalArgumentException("Not drawn: " + model);
    }
}
