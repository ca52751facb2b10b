// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.figures;

import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;
import pitchstack.ui.editor.places.Extent;
import pitchstack.ui.editor.places.Scene;

/** The solid between two rows. */
public final class BodyFigure extends SceneFigure {
    /** How far a body stands out beyond its rows. */
    private static final int RIM = 5;

    /** A body of any axis. */
    public BodyFigure(Look look) {
        super(look);
    }

    /** Shows a body, 0 being the base. */
    public void show(Scene scene, int number) {
        Extent px = scene.mapping().px(scene.places().bodies().get(number).extent());
        int left = whole(Math.floor(px.from())) - RIM;
        show(scene, left, scene.bands().stageTop(number - 1), whole(Math.ceil(px.to())) + RIM - left, scene.bands().body());
    }

    @Override
    void paintScene(Graphics graphics) {
        Rectangle seen = graphics.getClip(new Rectangle()).expand(4, 4).intersect(getBounds());
        graphics.setBackgroundColor(look().body());
        graphics.fillRectangle(seen);
        graphics.setForegroundColor(isSelected() ? look().selection() : look().bodyLine());
        graphics.setLineWidth(isSelected() ? 3 : 1);
        int inset = isSelected() ? 1 : 0;
        Rectangle line = getBounds();
        int left = Math.max(seen.x, line.x + inset);
        int right = Math.min(seen.right(), line.right() - 1 - inset);
        graphics.drawLine(left, line.y + inset, right, line.y + inset);
        graphics.drawLine(left, line.bottom() - 1 - inset, right, line.bottom() - 1 - inset);
        graphics.drawLine(line.x + inset, line.y, line.x + inset, line.bottom() - 1);
        graphics.drawLine(line.right() - 1 - inset, line.y, line.right() - 1 - inset, line.bottom() - 1);
    }
}
