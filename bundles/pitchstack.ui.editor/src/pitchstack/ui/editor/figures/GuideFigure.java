// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.figures;

import java.util.List;
import org.eclipse.draw2d.Graphics;
import pitchstack.ui.editor.places.Guides;
import pitchstack.ui.editor.places.Scene;

/** Lines from top to bottom where what is dragged lies over something else: dashed where it does, dotted where nearly. */
public final class GuideFigure extends SceneFigure {
    private List<Guides.Match> matches = List.of();

    /** No line yet. */
    public GuideFigure(Look look) {
        super(look);
    }

    /** Shows lines. */
    public void show(Scene scene, List<Guides.Match> found) {
        matches = found;
        show(scene, whole(scene.open().from()), scene.top(), whole(scene.open().length()), scene.height());
    }

    /** How many lines there are. */
    public int lines() {
        return matches.size();
    }

    @Override
    public boolean containsPoint(int x, int y) {
        return false;
    }

    @Override
    void paintScene(Graphics graphics) {
        graphics.setForegroundColor(look().ink());
        for (Guides.Match match : matches) {
            int x = whole(scene().mapping().px(match.place()));
            graphics.setLineStyle(match.exact() ? Graphics.LINE_DASH : Graphics.LINE_DOT);
            graphics.drawLine(x, getBounds().y, x, getBounds().bottom());
        }
    }
}
