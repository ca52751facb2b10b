// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.figures;

import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Rectangle;
import pitchstack.ui.editor.places.Extent;
import pitchstack.ui.editor.places.Scene;

/** The part of a stage that scrolls. It cuts off at the labels what lies behind them, and is nothing itself. */
public final class TrackFigure extends Figure {
    /** Shows a height of the drawing. */
    void show(Scene scene, int top, int height) {
        Extent open = scene.open();
        setBounds(new Rectangle(SceneFigure.whole(open.from()), top, SceneFigure.whole(open.length()), height));
    }

    @Override
    public boolean containsPoint(int x, int y) {
        return super.containsPoint(x, y) && getChildren().stream().anyMatch(child -> ((IFigure) child).containsPoint(x, y));
    }
}
