// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import java.util.function.Function;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.RectangleFigure;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.LayerConstants;
import pitchstack.ui.editor.figures.TipFigure;

/** Shows where something would go: a bar in the drawing, and a few words beside the pointer. */
final class PlaceMark {
    private static final int TIP_ABOVE = 34;
    private static final int TIP_BESIDE = 14;

    private final SideView view;
    private final Function<Object, IFigure> layers;
    private RectangleFigure bar;
    private TipFigure tip;

    /** @param layers gives a layer of the drawing by its name */
    PlaceMark(SideView view, Function<Object, IFigure> layers) {
        this.view = view;
        this.layers = layers;
    }

    private IFigure layer() {
        return layers.apply(LayerConstants.FEEDBACK_LAYER);
    }

    /**
     * Shows it, in place of what was shown before.
     *
     * @param place the bar; empty for none
     * @param at the pointer, in the drawing
     */
    void show(Rectangle place, String words, Point at) {
        if (tip == null) {
            bar = new RectangleFigure();
            bar.setBackgroundColor(view.look().mark());
            bar.setOutline(false);
            tip = new TipFigure();
            layer().add(bar);
            layer().add(tip);
        }
        bar.setBounds(place);
        tip.setText(words);
        tip.setSize(tip.getPreferredSize());
        tip.setLocation(view.inSight(at.getTranslated(TIP_BESIDE, -TIP_ABOVE), tip.getSize()));
    }

    /** Takes it away. */
    void hide() {
        if (tip != null) {
            layer().remove(bar);
            layer().remove(tip);
            tip = null;
        }
    }
}
