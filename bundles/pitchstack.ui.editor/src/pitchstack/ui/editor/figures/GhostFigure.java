// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.figures;

import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;
import pitchstack.ui.editor.places.AxisPlaces;
import pitchstack.ui.editor.places.Extent;
import pitchstack.ui.editor.places.Scene;

/** Where a body would stand after a proposed move: a dashed outline over the drawing. It never takes a click. */
final class GhostFigure extends SceneFigure {
    private AxisPlaces planned;
    private int body;

    /** No ghost yet. */
    GhostFigure(Look look) {
        super(look);
    }

    /**
     * Shows where a body would stand.
     *
     * @param number the body, 0 being the base
     * @param there the places after the move, or {@code null} for no move
     */
    void show(Scene scene, int number, AxisPlaces there) {
        planned = there;
        body = number;
        Extent open = scene.open();
        show(scene, whole(open.from()), scene.bands().stageTop(number - 1), whole(open.length()), scene.bands().body());
    }

    @Override
    public boolean containsPoint(int x, int y) {
        return false;
    }

    @Override
    void paintScene(Graphics graphics) {
        if (planned == null || planned.bodies().size() != scene().places().bodies().size()) {
            return;
        }
        Extent there = planned.bodies().get(body).extent();
        if (Math.abs(there.from() - scene().places().bodies().get(body).extent().from())
                * scene().mapping().pxPerCount() < 1) {
            return;
        }
        graphics.setForegroundColor(look().mark());
        graphics.setLineStyle(Graphics.LINE_DASH);
        graphics.setLineWidth(2);
        Extent px = scene().mapping().px(there);
        // Cut to what is seen, since dashes of a line far outside are counted one by one.
        int left = Math.max(getBounds().x - 8, whole(px.from()));
        int right = Math.min(getBounds().right() + 8, whole(px.to()));
        if (left < right) {
            graphics.drawRectangle(new Rectangle(left, getBounds().y + 1, right - left, getBounds().height - 3));
        }
    }
}
