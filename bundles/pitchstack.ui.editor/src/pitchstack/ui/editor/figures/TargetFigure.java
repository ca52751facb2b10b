// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.figures;

import org.eclipse.draw2d.Cursors;
import org.eclipse.draw2d.Graphics;
import pitchstack.ui.editor.places.Bands;
import pitchstack.ui.editor.places.Scene;

/** A target on the ruler: an open diamond that stands on the line. */
public final class TargetFigure extends SceneFigure {
    private static final int HALF = 5;

    /** A target of any axis. */
    public TargetFigure(Look look) {
        super(look);
        setCursor(Cursors.SIZEWE);
    }

    /** Shows it at a place of the unrolled axis; not where the labels cover it. */
    public void show(Scene scene, double place) {
        double px = scene.mapping().px(place);
        boolean seen = px >= scene.open().from() && px <= scene.open().to();
        setVisible(seen);
        show(scene, whole(px) - HALF, scene.top() + Bands.RULER - 2 * HALF - 2, 2 * HALF + 1, 2 * HALF + 1);
    }

    @Override
    void paintScene(Graphics graphics) {
        int x = getBounds().x + HALF;
        int y = getBounds().y + HALF;
        int[] corners = {x, y - HALF, x + HALF, y, x, y + HALF, x - HALF, y};
        graphics.setBackgroundColor(isSelected() ? look().selection() : look().ground());
        graphics.fillPolygon(corners);
        graphics.setForegroundColor(look().mark());
        graphics.setLineWidth(2);
        graphics.drawPolygon(corners);
    }
}
