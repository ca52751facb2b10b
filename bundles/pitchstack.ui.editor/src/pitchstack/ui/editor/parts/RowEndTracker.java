// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import java.util.List;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.editparts.LayerManager;
import org.eclipse.gef.tools.SimpleDragTracker;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.StageSpec;
import pitchstack.edit.ResizeRow;
import pitchstack.ui.editor.places.Mapping;
import pitchstack.ui.editor.places.RowPlace;
import pitchstack.ui.editor.places.Scene;

/**
 * Lengthens or shortens a row by the end that is dragged, in whole teeth, and shows what comes of it on the way. The other
 * end stays where it is. Near the sides of the window the drawing scrolls along, and grows with the row.
 */
final class RowEndTracker extends SimpleDragTracker {
    /** Nearer the side than the ends of a fitted drawing, so that some teeth can be added to them without scrolling. */
    private static final int NEAR = Mapping.MARGIN / 3;

    private final RowEditPart row;
    private final SideView view;
    private final boolean start;
    private double pressed;
    private Point scrolledBefore;
    private int heldPx;
    private ResizeRow shown;
    private PlaceMark tip;
    private GuideMark guides;

    RowEndTracker(RowEditPart row, SideView view, boolean start) {
        this.row = row;
        this.view = view;
        this.start = start;
    }

    @Override
    protected String getCommandName() {
        return "lengthen row";
    }

    private StageEditPart stage() {
        return (StageEditPart) row.getParent();
    }

    @Override
    protected boolean handleButtonDown(int button) {
        pressed = view.placeAt(getLocation().x);
        scrolledBefore = view.scrolled();
        return super.handleButtonDown(button);
    }

    @Override
    protected boolean handleDragInProgress() {
        super.handleDragInProgress();
        int side = view.edges().edge(getLocation(), NEAR);
        if (isInState(STATE_DRAG_IN_PROGRESS) && side != 0 && side == Integer.signum(getDragMoveDelta().width)) {
            if (side == outwards() && ResizeRow.allowed(row.row(), wanted()) == wanted()) {
                view.makeRoom(side);
            }
            view.edges().scroll(getLocation(), this::followIfDragging);
        }
        return true;
    }

    private void followIfDragging() {
        if (isInState(STATE_DRAG_IN_PROGRESS)) {
            handleDragInProgress();
        }
    }

    /** The side that the row grows to. */
    private int outwards() {
        return start ? -1 : 1;
    }

    private double pitch() {
        return view.session().analysis().spec().stages().get(stage().number()).pitch();
    }

    /** Teeth more than now, or fewer below 0, so that the end comes to the pointer. */
    private int wanted() {
        return pitch() <= 0 ? 0 : (int) Math.round(outwards() * (view.placeAt(getLocation().x) - pressed) / pitch());
    }

    private ResizeRow edit() {
        int teeth = ResizeRow.allowed(row.row(), wanted());
        return new ResizeRow(row.row(), start ? teeth : 0, start ? 0 : teeth);
    }

    @Override
    protected Command getCommand() {
        ResizeRow edit = edit();
        return edit.atStart() + edit.atEnd() == 0 ? null : new EditCommand(edit, row.row());
    }

    @Override
    protected void performDrag() {
        super.performDrag();
        view.keep(this::heldEnd, heldPx);
    }

    /** The end that is not dragged, a pixel of the drawing. */
    private int heldEnd() {
        return start ? row.getFigure().getBounds().right() : row.getFigure().getBounds().x;
    }

    /** A rider row is drawn about the reference of its body, which moves by half of what is added, away from the other end. */
    private double shift(ResizeRow edit) {
        return row.isBase() ? 0 : (edit.atEnd() - edit.atStart()) / 2.0 * pitch();
    }

    @Override
    protected void showSourceFeedback() {
        if (!isInState(STATE_DRAG_IN_PROGRESS | STATE_ACCESSIBLE_DRAG_IN_PROGRESS)) {
            return;
        }
        ResizeRow edit = edit();
        AxisSpec now = view.session().analysis().spec();
        StageSpec changed = now.stages().get(stage().number());
        RowPair rows = edit.preview(changed.rows());
        if (!edit.equals(shown)) {
            view.tryOut(now.withStage(stage().number(), changed.withRows(rows)), shift(edit));
            shown = edit;
        }
        if (tip == null) {
            tip = new PlaceMark(view, LayerManager.Helper.find(row)::getLayer);
            guides = new GuideMark(view, LayerManager.Helper.find(row)::getLayer);
        }
        Point at = getLocation().getCopy();
        row.getFigure().translateToRelative(at);
        int teeth = (row.isBase() ? rows.base() : rows.rider()).teeth();
        StageWords words = new StageWords(stage().stage(), rows, stage().stage().getIndex());
        tip.show(new Rectangle(), GuideMark.words(teeth + " teeth, index " + words.range() + ", " + words.engaged(), inLine()),
                at);
    }

    private List<String> inLine() {
        Scene scene = view.scene();
        RowPlace place = row.rowFigure().row();
        String which = (start ? "the first tooth of the " : "the end of the ") + (row.isBase() ? "base row of " : "rider row of ")
                + scene.spec().stages().get(stage().number()).title(stage().number());
        return guides.show(scene, StayingLines.of(view, scene).with(place.edge(start ? 0 : place.teeth()), which));
    }

    @Override
    protected void eraseSourceFeedback() {
        if (tip != null) {
            tip.hide();
            guides.hide();
            tip = null;
            shown = null;
            heldPx = heldEnd() - view.scrolled().x;
            view.tryOut(null, 0);
            view.scrollTo(scrolledBefore.x, scrolledBefore.y);
        }
    }
}
