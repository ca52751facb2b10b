// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import java.util.List;
import java.util.function.Function;
import org.eclipse.draw2d.IFigure;
import org.eclipse.gef.LayerConstants;
import pitchstack.ui.editor.figures.GuideFigure;
import pitchstack.ui.editor.places.Guides;
import pitchstack.ui.editor.places.Scene;

/** Shows, while something is dragged, what it lies in line with. */
final class GuideMark {
    /** Nearer than this two places look as if one lay above the other; the words say by how much they do not. */
    private static final double NEAR_PX = 3;

    private final SideView view;
    private final Function<Object, IFigure> layers;
    private GuideFigure figure;

    /** @param layers gives a layer of the drawing by its name */
    GuideMark(SideView view, Function<Object, IFigure> layers) {
        this.view = view;
        this.layers = layers;
    }

    /** Shows the lines, in place of those shown before, and gives their words. */
    List<String> show(Scene scene, Guides guides) {
        List<Guides.Match> matches = guides.matches(NEAR_PX / scene.mapping().pxPerCount());
        if (figure == null) {
            figure = new GuideFigure(view.look());
            layers.apply(LayerConstants.FEEDBACK_LAYER).add(figure, 0);
        }
        figure.show(scene, matches);
        return matches.stream().map(Guides.Match::words).toList();
    }

    /** Words of a drag, with what is in line below. */
    static String words(String first, List<String> inLine) {
        return inLine.isEmpty() ? first : first + "\n" + String.join("\n", inLine);
    }

    /** Takes the lines away. */
    void hide() {
        if (figure != null) {
            figure.getParent().remove(figure);
            figure = null;
        }
    }
}
