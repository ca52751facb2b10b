// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import java.util.OptionalLong;
import org.eclipse.draw2d.IFigure;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.units.TrueMinus;
import pitchstack.edit.Edit;
import pitchstack.edit.MoveDatum;
import pitchstack.ui.editor.figures.ZeroFigure;
import pitchstack.ui.editor.places.Scene;

/** Position 0, marked on the ruler. Moved along it, it makes another place of the device position 0. */
final class ZeroEditPart extends SlidingEditPart {
    ZeroEditPart(ZeroMark zero, SideView view) {
        super(zero, view);
    }

    private ZeroMark zero() {
        return (ZeroMark) getModel();
    }

    private ZeroFigure drawn() {
        return (ZeroFigure) getFigure();
    }

    private AxisSpec spec() {
        return view().session().analysis(zero().axis()).spec();
    }

    @Override
    protected IFigure createFigure() {
        return new ZeroFigure(view().look());
    }

    @Override
    public String tip() {
        return "Position 0, with the datum at " + TrueMinus.in(spec().scale().format(spec().datum()));
    }

    @Override
    public String called() {
        return "position 0";
    }

    @Override
    public String dragged(String at) {
        int targets = zero().axis().getTargets().size();
        return at + " becomes 0" + (targets == 0 ? "" : targets == 1 ? "; the target keeps its number"
                : "; the " + targets + " targets keep their numbers");
    }

    @Override
    public OptionalLong position() {
        return OptionalLong.of(0);
    }

    @Override
    public long allowed(long wanted) {
        return spec().scale().wrap(wanted);
    }

    @Override
    public Edit movedTo(long position) {
        return new MoveDatum(zero().axis(), spec(), position);
    }

    @Override
    public void showAt(long position) {
        show(view().scene(), position);
    }

    @Override
    public void show(Scene scene) {
        show(scene, 0);
    }

    private void show(Scene scene, long position) {
        drawn().show(scene, scene.place(position));
    }
}
