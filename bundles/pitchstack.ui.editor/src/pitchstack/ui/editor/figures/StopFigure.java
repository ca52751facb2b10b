// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.figures;

import org.eclipse.draw2d.Cursors;
import org.eclipse.draw2d.Graphics;
import pitchstack.ui.editor.places.Bands;
import pitchstack.ui.editor.places.Scene;

/** A stop on the ruler: a block beyond which nothing goes. */
public final class StopFigure extends SceneFigure {
    private static final int BLOCK = 5;
    private static final int HEIGHT = 10;
    /** So much beside the block takes a press, too. */
    private static final int GRIP = 2;

    private final boolean high;

    /** @param high whether it stands at the right of its position, as the stop at the high end does */
    public StopFigure(Look look, boolean high) {
        super(look);
        this.high = high;
        setCursor(Cursors.SIZEWE);
    }

    /** Shows it at a place of the unrolled axis; not where the labels cover it. */
    public void show(Scene scene, double place) {
        double px = scene.mapping().px(place);
        setVisible(px >= scene.open().from() && px <= scene.open().to());
        show(scene, whole(px) - (high ? 0 : BLOCK) - GRIP, scene.top() + Bands.RULER - HEIGHT - GRIP, BLOCK + 2 * GRIP,
                HEIGHT + GRIP);
    }

    @Override
    void paintScene(Graphics graphics) {
        graphics.setBackgroundColor(isSelected() ? look().selection() : look().ink());
        graphics.fillRectangle(getBounds().getCopy().shrink(GRIP, 0));
        if (isSelected()) {
            graphics.setForegroundColor(look().ink());
            graphics.drawRectangle(getBounds().getCopy().resize(-1, -1));
        }
    }
}
