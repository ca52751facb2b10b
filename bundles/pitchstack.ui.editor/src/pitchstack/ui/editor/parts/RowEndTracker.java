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
import pitchstack.ui.editor.places.RowPlace;
import pitchstack.ui.editor.places.Scene;

/**
 * Lengthens or shortens a row by the end that is dragged, in whole teeth, and shows what comes of it on the way. The other
 * end stays where it is.
 */
final class RowEndTracker extends SimpleDragTracker {
    private final RowEditPart row;
    private final SideView view;
    private final boolean start;
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

    private ResizeRow edit() {
        double pitchPx = view.pitchPx(stage().number());
        int outwards = (start ? -1 : 1) * getDragMoveDelta().width;
        int teeth = pitchPx <= 0 ? 0 : ResizeRow.allowed(row.row(), (int) Math.round(outwards / pitchPx));
        return new ResizeRow(row.row(), start ? teeth : 0, start ? 0 : teeth);
    }

    @Override
    protected Command getCommand() {
        ResizeRow edit = edit();
        return edit.atStart() + edit.atEnd() == 0 ? null : new EditCommand(edit, row.row());
    }

    @Override
    protected void performDrag() {
        view.hold(() -> start ? row.getFigure().getBounds().right() : row.getFigure().getBounds().x, super::performDrag);
    }

    /** A rider row is drawn about the reference of its body, which moves by half of what is added, away from the other end. */
    private double shift(ResizeRow edit) {
        return row.isBase() ? 0 : (edit.atEnd() - edit.atStart()) / 2.0
                * view.session().analysis().spec().stages().get(stage().number()).pitch();
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
        view.tryOut(now.withStage(stage().number(), changed.withRows(rows)), shift(edit));
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
        return guides.show(scene, view.guides(scene).with(place.edge(start ? 0 : place.teeth()), which));
    }

    @Override
    protected void eraseSourceFeedback() {
        if (tip != null) {
            tip.hide();
            guides.hide();
            view.tryOut(null, 0);
        }
    }
}
