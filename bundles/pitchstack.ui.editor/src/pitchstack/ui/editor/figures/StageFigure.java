// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.figures;

import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Rectangle;
import pitchstack.ui.editor.places.AxisPlaces;
import pitchstack.ui.editor.places.Bands;
import pitchstack.ui.editor.places.Scene;

/** A stage: its label, its moved body with the words on it, and room for its rows. Without a stage, the base. */
public final class StageFigure extends Figure {
    private final LabelFigure label;
    private final TrackFigure track = new TrackFigure();
    private final Figure rows = new Rows();
    private final BodyFigure body;
    private final GhostFigure ghost;
    private final NotesFigure notes;

    /** An empty stage. */
    public StageFigure(Look look) {
        label = new LabelFigure(look);
        body = new BodyFigure(look);
        ghost = new GhostFigure(look);
        notes = new NotesFigure(look);
        track.add(body);
        track.add(rows);
        track.add(ghost);
        track.add(notes);
        add(track);
        add(label);
    }

    /** Where the figures of the rows belong. */
    public IFigure rows() {
        return rows;
    }

    /** Where its body is, all of it. */
    public Rectangle bodyBounds() {
        return body.getBounds().getCopy();
    }

    /**
     * Shows a stage.
     *
     * @param number the stage, 0 being the lowest; −1 is the base
     * @param bodyName what is written on its body
     * @param remark what is added to that where there is room, or empty
     * @param words its label
     */
    public void show(Scene scene, int number, String bodyName, String remark, LabelFigure.Words words) {
        Bands bands = scene.bands();
        Bands seated = bands.lifted(0, 0);
        // A lifted stage leaves its base row below; its label stays beside both.
        int top = bands.stageTop(number);
        int bottom = number < 0 ? top + bands.body() : bands.baseTop(number) + Bands.STRIP;
        int labelHeight = number < 0 ? bands.body() : bands.stageHeight();
        setBounds(new Rectangle(scene.left(), top, scene.width(), bottom - top)
                .union(new Rectangle(scene.left(), seated.stageTop(number), scene.width(), labelHeight)));
        track.show(scene, top, bottom - top);
        rows.setBounds(track.getBounds());
        body.show(scene, number + 1);
        notes.show(scene, number + 1, bodyName, remark);
        label.show(scene, seated.stageTop(number), labelHeight, words);
    }

    /**
     * Shows where its body would stand after a proposed move.
     *
     * @param number the stage
     * @param there the places after the move, or {@code null} for no move
     */
    public void showMove(Scene scene, int number, AxisPlaces there) {
        ghost.show(scene, number + 1, there);
    }

    /** Whether a point is on its label. */
    public boolean labelContains(int x, int y) {
        return label.containsPoint(x, y);
    }

    /** The line of its name on the label. */
    public Rectangle nameBounds() {
        return label.lineBounds(0);
    }

    /** The line of its pitch on the label, or where that would be. */
    public Rectangle factsBounds() {
        return label.lineBounds(1);
    }

    /** Marks it as selected, or not. */
    public void setSelected(boolean marked) {
        body.setSelected(marked);
        label.setSelected(marked);
    }

    /** Whether a point is on the label or on something of the stage, not on the empty ground beside it. */
    @Override
    public boolean containsPoint(int x, int y) {
        return super.containsPoint(x, y) && (label.containsPoint(x, y) || track.containsPoint(x, y));
    }

    /** Takes a click only where a row does. */
    private static final class Rows extends Figure {
        @Override
        public boolean containsPoint(int x, int y) {
            return super.containsPoint(x, y)
                    && getChildren().stream().anyMatch(child -> ((IFigure) child).containsPoint(x, y));
        }
    }
}
