// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.figures;

import org.eclipse.draw2d.Cursors;
import org.eclipse.draw2d.Graphics;
import pitchstack.ui.editor.places.Bands;
import pitchstack.ui.editor.places.Scene;

/** Where positions are counted from: a triangle that stands on the line of the ruler with its base. */
public final class ZeroFigure extends SceneFigure {
    private static final int HALF = 5;
    private static final int HEIGHT = 9;
    /** So much beside the triangle takes a press, too. */
    private static final int GRIP = 1;

    /** A mark of any axis. */
    public ZeroFigure(Look look) {
        super(look);
        setCursor(Cursors.SIZEWE);
    }

    /** Shows it at a place of the unrolled axis; not where the labels cover it. */
    public void show(Scene scene, double place) {
        double px = scene.mapping().px(place);
        setVisible(px >= scene.open().from() && px <= scene.open().to());
        show(scene, whole(px) - HALF - GRIP, scene.top() + Bands.RULER - HEIGHT - 1, 2 * (HALF + GRIP) + 1, HEIGHT + 1);
    }

    @Override
    void paintScene(Graphics graphics) {
        int x = getBounds().x + HALF + GRIP;
        int foot = getBounds().bottom() - 1;
        int[] corners = {x, foot - HEIGHT + 1, x + HALF, foot, x - HALF, foot};
        graphics.setBackgroundColor(isSelected() ? look().selection() : look().panel());
        graphics.fillPolygon(corners);
        graphics.setForegroundColor(look().ink());
        graphics.drawPolygon(corners);
    }
}
