// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.EditPolicy;
import org.eclipse.gef.Request;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.units.Scale;
import pitchstack.core.units.TrueMinus;
import pitchstack.model.Axis;
import pitchstack.ui.editor.figures.AxisFigure;
import pitchstack.ui.editor.figures.LabelFigure;
import pitchstack.ui.editor.places.AxisPlaces;
import pitchstack.ui.editor.places.Bands;
import pitchstack.ui.editor.places.Dots;
import pitchstack.ui.editor.places.Mapping;
import pitchstack.ui.editor.places.Scene;

/** The axis that is looked at. It hands every new scene down to all that is drawn. */
public final class AxisEditPart extends SpokenEditPart implements Tipped {
    private final SideView view;
    private final Nearby nearby;
    private final ZeroMark zero;
    private final StopMark lowStop;
    private final StopMark highStop;

    AxisEditPart(Axis axis, SideView view) {
        this.view = view;
        nearby = new Nearby(view.display(), this::showDots);
        zero = new ZeroMark(axis);
        lowStop = new StopMark(axis, false);
        highStop = new StopMark(axis, true);
        setModel(axis);
    }

    /** What the checks found on the axis itself. */
    private Found found() {
        return Found.at(view.session().analysis().findings(), OptionalInt.empty());
    }

    /** Said of the base and of the empty ground, where there is anything to say. */
    @Override
    public String tip() {
        return found().findings().isEmpty() ? null : found().lines().substring(1);
    }

    private void showDots(Dots found) {
        view.showDots(found);
        axisFigure().showDots(view.standing(), found);
    }

    /** On the ruler, what the dots on it are. */
    @Override
    public String tip(Point at) {
        return at.y < Bands.RULER && at.x > Mapping.GUTTER && !view.session().analysis().hasErrors()
                ? DotWords.of(view.dots(), view.spec().scale()) : tip();
    }

    /** The axis. */
    public Axis axis() {
        return (Axis) getModel();
    }

    @Override
    String spoken() {
        return "Axis " + name() + ", carriage at " + view.position();
    }

    @Override
    protected IFigure createFigure() {
        return new AxisFigure(view.look());
    }

    @Override
    public IFigure getContentPane() {
        return axisFigure().stages();
    }

    private AxisFigure axisFigure() {
        return (AxisFigure) getFigure();
    }

    @Override
    protected List<Object> getModelChildren() {
        List<Object> children = new ArrayList<>(axis().getStages());
        AxisSpec spec = view.session().analysis(axis()).spec();
        children.add(zero);
        spec.low().ifPresent(low -> children.add(lowStop));
        spec.high().ifPresent(high -> children.add(highStop));
        children.addAll(axis().getTargets());
        return children;
    }

    @Override
    protected void addChildVisual(EditPart child, int index) {
        if (child instanceof Sliding mark) {
            axisFigure().marks().add(mark.getFigure());
        } else {
            super.addChildVisual(child, index);
        }
    }

    @Override
    protected void removeChildVisual(EditPart child) {
        if (child instanceof Sliding mark) {
            axisFigure().marks().remove(mark.getFigure());
        } else {
            super.removeChildVisual(child);
        }
    }

    @Override
    protected void createEditPolicies() {
        installEditPolicy(EditPolicy.SELECTION_FEEDBACK_ROLE, new ShowSelection(axisFigure()::setSelected));
        installEditPolicy(EditPolicy.LAYOUT_ROLE, new PlacePolicy(view));
    }

    @Override
    public DragTracker getDragTracker(Request request) {
        return new PanTracker(this, view);
    }

    @Override
    public void activate() {
        super.activate();
        view.onChange(this::show);
        show();
    }

    @Override
    public void deactivate() {
        nearby.forget();
        view.onChange(() -> { });
        super.deactivate();
    }

    /** Takes up a change of the document. */
    void documentChanged() {
        refreshAll(this);
        show();
    }

    private static void refreshAll(EditPart part) {
        part.refresh();
        for (Object child : List.copyOf((List<?>) part.getChildren())) {
            refreshAll((EditPart) child);
        }
    }

    /** Draws the scene as it is now. */
    void show() {
        if (!isActive() || view.session().axis() != axis()) {
            return;
        }
        Scene scene = view.scene();
        axisFigure().show(scene, CarriageWords.measured(scene.spec().scale()), view.position(),
                new LabelFigure.Words("Base", name(), "",
                        TrueMinus.in("datum " + scene.spec().scale().format(scene.spec().datum())), "", found().badge()));
        AxisPlaces planned = view.proposed().orElse(null);
        askNearby(scene);
        point();
        for (Object child : getChildren()) {
            if (child instanceof StageEditPart stage) {
                stage.show(scene, planned);
            } else if (child instanceof Sliding mark) {
                mark.show(scene);
            }
        }
    }

    /** A sheet does not wait for marks, and is the same every time. */
    private void askNearby(Scene scene) {
        if (view.isOnSheet()) {
            nearby.forget();
            showDots(Dots.NONE);
            return;
        }
        double standing = view.standing();
        nearby.ask(new Nearby.Question(view.session().analysis(), view.session().analysis().current(),
                scene.mapping().places(scene.open()).shift(-standing), scene.dotsApart()));
    }

    /** Marks the position on the ruler that is pointed at, or none; on a rotary axis the turn of it that is nearest. */
    void point() {
        OptionalLong position = view.session().pointed();
        if (!isActive() || view.session().axis() != axis() || position.isEmpty()) {
            axisFigure().point(OptionalDouble.empty(), "");
            return;
        }
        Scene scene = view.scene();
        Scale scale = scene.spec().scale();
        axisFigure().point(OptionalDouble.of(scene.place(position.getAsLong())), TrueMinus.in(scale.format(position.getAsLong())));
    }

    private String name() {
        return axis().getName() == null ? "" : axis().getName();
    }
}
