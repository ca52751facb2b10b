// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.figures;

import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;
import pitchstack.ui.editor.places.AxisPlaces;
import pitchstack.ui.editor.places.Extent;
import pitchstack.ui.editor.places.Scene;

/** Where the bodies would stand after a proposed move: dashed outlines over the drawing. It never takes a click. */
public final class GhostFigure extends SceneFigure {
    private AxisPlaces planned;

    /** No ghost yet. */
    public GhostFigure(Look look) {
        super(look);
    }

    /**
     * Shows where the bodies would stand.
     *
     * @param there the places after the move, or {@code null} for no move
     */
    public void show(Scene scene, AxisPlaces there) {
        planned = there;
        Extent open = scene.open();
        show(scene, whole(open.from()), scene.top(), whole(open.length()), scene.height());
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
        graphics.setForegroundColor(look().mark());
        graphics.setLineStyle(Graphics.LINE_DASH);
        graphics.setLineWidth(2);
        for (int body = 1; body < planned.bodies().size(); body++) {
            Extent there = planned.bodies().get(body).extent();
            if (Math.abs(there.from() - scene().places().bodies().get(body).extent().from())
                    * scene().mapping().pxPerCount() >= 1) {
                Extent px = scene().mapping().px(there);
                // Cut to what is seen, since dashes of a line far outside are counted one by one.
                int left = Math.max(getBounds().x - 8, whole(px.from()));
                int right = Math.min(getBounds().right() + 8, whole(px.to()));
                if (left < right) {
                    graphics.drawRectangle(new Rectangle(left, scene().bands().stageTop(body - 1) + 1, right - left,
                            scene().bands().body() - 3));
                }
            }
        }
    }
}
