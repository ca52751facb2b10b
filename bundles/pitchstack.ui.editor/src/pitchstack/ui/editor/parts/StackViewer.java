// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.GraphicsSource;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.LightweightSystem;
import org.eclipse.draw2d.Viewport;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.GraphicalEditPart;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.MouseWheelHandler;
import org.eclipse.gef.editparts.LayerManager;
import org.eclipse.gef.editparts.ScalableRootEditPart;
import org.eclipse.gef.ui.parts.GraphicalViewerImpl;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.MouseListener;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import pitchstack.core.stack.ToothSpan;
import pitchstack.edit.Properties;
import pitchstack.edit.Session;
import pitchstack.edit.SessionListener.Change;
import pitchstack.model.Row;
import pitchstack.ui.editor.palette.PieceTool;
import pitchstack.ui.editor.places.Extent;
import pitchstack.ui.editor.places.Mapping;
import pitchstack.ui.editor.places.RowPlace;

/** Shows the axis that a session looks at. Select by model elements; which parts draw them is nobody else's concern. */
public final class StackViewer extends GraphicalViewerImpl {
    private SideView view;
    private Consumer<Boolean> typing = now -> { };

    /**
     * Makes the canvas and shows the session's axis on it.
     *
     * @param parent where the canvas goes
     * @param session the document
     */
    public void open(Composite parent, Session session) {
        createControl(parent);
        setRootEditPart(new ScalableRootEditPart());
        view = new SideView(session, canvas());
        setEditPartFactory(new StackPartFactory(view));
        setKeyHandler(new StackKeys(this));
        setProperty(MouseWheelHandler.KeyGenerator.getKey(SWT.MOD1), (MouseWheelHandler) (event, viewer) -> zoom(event));
        setProperty(MouseWheelHandler.KeyGenerator.getKey(SWT.MOD2), (MouseWheelHandler) (event, viewer) -> pan(event));
        setContents(session.axis());
        getControl().addMouseMoveListener(event -> showTip(event.stateMask, event.x, event.y));
        getControl().addMouseListener(MouseListener.mouseDownAdapter(event -> getControl().setToolTipText(null)));
    }

    /** The system's own tip; none while something is dragged or placed, which has words of its own. */
    private void showTip(int state, int x, int y) {
        boolean busy = (state & SWT.BUTTON_MASK) != 0 || getEditDomain().getActiveTool() instanceof PieceTool;
        EditPart part = busy ? null : findObjectAt(new Point(x, y));
        String tip = part instanceof Tipped tipped ? tipped.tip(new Point(x, y)) : null;
        if (!Objects.equals(tip, getControl().getToolTipText())) {
            getControl().setToolTipText(tip);
        }
    }

    @Override
    public Control createControl(Composite parent) {
        setControl(new WholeCanvas(parent, getLightweightSystem()));
        getLightweightSystem().getUpdateManager().setGraphicsSource(new LaterSource(getControl()));
        canvas().setViewport((Viewport) getRootFigure());
        return getControl();
    }

    @Override
    protected void setRootFigure(IFigure figure) {
        super.setRootFigure(figure);
        if (getControl() != null) {
            canvas().setViewport((Viewport) figure);
        }
    }

    private FigureCanvas canvas() {
        return (FigureCanvas) getControl();
    }

    /** Which part of the axis is seen. */
    public SideView view() {
        return view;
    }

    /** What is drawn, without handles and what follows the pointer. */
    public IFigure drawing() {
        return LayerManager.Helper.find(getRootEditPart()).getLayer(LayerConstants.PRINTABLE_LAYERS);
    }

    /** Takes up a change of the document, of the axis looked at, or of the setting shown. */
    public void sessionChanged(Change change) {
        if (getContents().getModel() != view.session().axis()) {
            setContents(view.session().axis());
            view.fit();
            return;
        }
        AxisEditPart axis = (AxisEditPart) getContents();
        switch (change) {
            case DOCUMENT -> axis.documentChanged();
            case PREVIEW, AXIS, PROPOSED -> axis.show();
            case POINTED -> axis.point();
            case SUPPOSED, FILE -> { }
        }
    }

    /** The element that is selected, if any is. */
    public Optional<EObject> selectedElement() {
        return Elements.selected(new StructuredSelection(
                getSelectedEditParts().stream().map(part -> ((EditPart) part).getModel()).toList()));
    }

    /** The mark of the ruler that is selected, if one is. */
    Optional<Sliding> selectedMark() {
        return getSelectedEditParts().stream().filter(Sliding.class::isInstance).map(Sliding.class::cast).findFirst();
    }

    /** The stop that is selected, if one is; it is no element of the document. */
    public Optional<StopMark> selectedStop() {
        return selectedMark().map(EditPart::getModel).filter(StopMark.class::isInstance).map(StopMark.class::cast);
    }

    /** Selects an element of the axis that is looked at and brings it into sight; an element that is not drawn is left. */
    public void selectElement(EObject element) {
        if (getEditPartRegistry().get(element) instanceof EditPart part) {
            if (!getSelectedEditParts().equals(List.of(part))) {
                select(part);
            }
            reveal(part);
        }
    }

    /** @param told that typing in the drawing begins, and that it has ended */
    public void onTyping(Consumer<Boolean> told) {
        typing = told;
    }

    /** Opens a field in which the name or the pitch of the selected stage is typed. */
    public void edit(String fact) {
        selectedElement().flatMap(Elements::stage).map(getEditPartRegistry()::get)
                .ifPresent(part -> edit((StageEditPart) part, fact));
    }

    void edit(StageEditPart part, String fact) {
        reveal(part);
        Properties.of(view.session(), part.stage()).stream().filter(property -> property.id().equals(fact)).findFirst()
                .ifPresent(property -> new InPlaceField(canvas(), part.fieldBounds(fact), view.session(), property, typing,
                        fact.equals("pitch") ? Optional.of(new PitchChoice(view.spec().scale(), property.text()))
                                : Optional.empty()));
    }

    /** The tooth of a row at a pixel of the drawing; empty beside the row, or if the row is not drawn. */
    public OptionalInt tooth(Row row, int x) {
        if (!(getEditPartRegistry().get(row) instanceof RowEditPart part)) {
            return OptionalInt.empty();
        }
        RowPlace place = part.rowFigure().row();
        double at = view.scene().mapping().place(x);
        return at < place.left() || at >= place.edge(place.teeth()) ? OptionalInt.empty()
                : OptionalInt.of(place.toothAt(at));
    }

    /** The teeth of a drawn row from one pixel of the drawing to another at its right; empty beside the row. */
    ToothSpan teeth(Row row, int from, int to) {
        if (!(getEditPartRegistry().get(row) instanceof RowEditPart part)) {
            return new ToothSpan(0, -1);
        }
        Mapping mapping = view.scene().mapping();
        return part.rowFigure().row().teethIn(new Extent(mapping.place(from), mapping.place(to)));
    }

    @Override
    public void reveal(EditPart part) {
        if (part instanceof AxisEditPart || !(part instanceof GraphicalEditPart drawn)) {
            return;
        }
        Rectangle bounds = drawn instanceof StageEditPart stage ? stage.bodyBounds() : drawn.getFigure().getBounds();
        view.reveal(bounds);
    }

    private void zoom(Event event) {
        event.doit = false;
        view.zoom(Math.pow(SideView.ZOOM_STEP, Math.signum(event.count)), event.x);
    }

    private void pan(Event event) {
        event.doit = false;
        view.scrollBy(-Math.signum(event.count) / 10);
    }

    /** Paints all that is seen after scrolling: labels and ruler stay where they are, so nothing can be copied. */
    private static final class WholeCanvas extends FigureCanvas {
        WholeCanvas(Composite parent, LightweightSystem system) {
            super(parent, SWT.DOUBLE_BUFFERED, system);
        }

        @Override
        public void scrollToX(int x) {
            getViewport().setHorizontalLocation(x);
        }

        @Override
        public void scrollToY(int y) {
            getViewport().setVerticalLocation(y);
        }
    }

    /** Leaves painting to the system's paint event, which comes once for many changes and at the screen's own resolution. */
    private record LaterSource(Control canvas) implements GraphicsSource {
        @Override
        public Graphics getGraphics(Rectangle region) {
            canvas.redraw(region.x, region.y, region.width, region.height, false);
            return null;
        }

        @Override
        public void flushGraphics(Rectangle region) {
            // nothing was painted here
        }
    }
}
