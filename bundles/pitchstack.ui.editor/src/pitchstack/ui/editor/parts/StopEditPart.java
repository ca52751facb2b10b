// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import java.util.OptionalLong;
import org.eclipse.draw2d.IFigure;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.units.TrueMinus;
import pitchstack.edit.Edit;
import pitchstack.edit.PlaceStop;
import pitchstack.ui.editor.figures.StopFigure;
import pitchstack.ui.editor.places.Scene;

/** A stop, a block on the ruler that can be moved along it. */
public final class StopEditPart extends SlidingEditPart {
    StopEditPart(StopMark stop, SideView view) {
        super(stop, view);
    }

    /** The stop. */
    public StopMark stop() {
        return (StopMark) getModel();
    }

    private StopFigure drawn() {
        return (StopFigure) getFigure();
    }

    private AxisSpec spec() {
        return view().session().analysis(stop().axis()).spec();
    }

    @Override
    protected IFigure createFigure() {
        return new StopFigure(view().look(), stop().high());
    }

    @Override
    public String tip() {
        return stop().called().replaceFirst("^.", stop().high() ? "H" : "L")
                + position().stream().mapToObj(at -> " at " + TrueMinus.in(spec().scale().format(at))).findFirst().orElse("");
    }

    @Override
    public String called() {
        return stop().called();
    }

    @Override
    public OptionalLong position() {
        return stop().high() ? spec().high() : spec().low();
    }

    /** Not past the other stop. */
    @Override
    public long allowed(long wanted) {
        long position = spec().scale().wrap(wanted);
        return stop().high() ? Math.max(position, spec().low().orElse(position)) : Math.min(position, spec().high().orElse(position));
    }

    @Override
    public Edit movedTo(long position) {
        return new PlaceStop(stop().axis(), spec().scale(), stop().high(), position);
    }

    @Override
    public void showAt(long position) {
        drawn().show(view().scene(), position);
    }

    @Override
    public void show(Scene scene) {
        position().ifPresent(position -> drawn().show(scene, position));
    }
}
