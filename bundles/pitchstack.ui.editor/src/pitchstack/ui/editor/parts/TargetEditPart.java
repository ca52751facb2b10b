// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import java.util.OptionalLong;
import org.eclipse.draw2d.IFigure;
import pitchstack.core.units.QuantityException;
import pitchstack.core.units.Scale;
import pitchstack.edit.Edit;
import pitchstack.edit.MoveTarget;
import pitchstack.model.Axis;
import pitchstack.model.Target;
import pitchstack.ui.editor.figures.TargetFigure;
import pitchstack.ui.editor.places.Scene;

/** A target, marked on the ruler. */
public final class TargetEditPart extends SlidingEditPart {
    TargetEditPart(Target target, SideView view) {
        super(target, view);
    }

    private Target target() {
        return (Target) getModel();
    }

    private TargetFigure drawn() {
        return (TargetFigure) getFigure();
    }

    @Override
    protected IFigure createFigure() {
        return new TargetFigure(view().look());
    }

    @Override
    public String tip() {
        return "Target " + (target().getName() == null ? "" : "“" + target().getName() + "” ") + "at " + target().getPosition();
    }

    /** Where a target is; empty where its text cannot be read, as the Findings view says then. */
    static OptionalLong position(Target target, Scale scale) {
        try {
            return OptionalLong.of(scale.parse(target.getPosition() == null ? "" : target.getPosition()));
        } catch (QuantityException unreadable) {
            return OptionalLong.empty();
        }
    }

    private Scale scale() {
        return view().session().analysis((Axis) target().eContainer()).spec().scale();
    }

    @Override
    public String called() {
        return target().getName() == null ? "target" : "target “" + target().getName() + "”";
    }

    @Override
    public OptionalLong position() {
        return position(target(), scale());
    }

    @Override
    public long allowed(long wanted) {
        return scale().wrap(wanted);
    }

    @Override
    public Edit movedTo(long position) {
        return new MoveTarget(target(), scale(), position);
    }

    @Override
    public void showAt(long position) {
        drawn().show(view().scene(), view().scene().place(position));
    }

    @Override
    public void show(Scene scene) {
        OptionalLong position = position();
        if (position.isPresent()) {
            drawn().show(scene, scene.place(position.getAsLong()));
        } else {
            drawn().setVisible(false);
        }
    }
}
