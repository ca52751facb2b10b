// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.figures;

import java.util.OptionalDouble;
import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Rectangle;
import pitchstack.ui.editor.places.Bands;
import pitchstack.ui.editor.places.Dots;
import pitchstack.ui.editor.places.Mapping;
import pitchstack.ui.editor.places.Scene;

/** The whole side view: ruler on top, stages from the carriage down to the base, labels at the left. */
public final class AxisFigure extends Figure {
    private static final int DASH = 4;
    private static final String EMPTY = "No stage yet. Take a piece from the bar above and click here, or use Stage > Place.";

    private final Look look;
    private final Figure stages = new Stages();
    private final Figure marks = new Stages();
    private final StageFigure base;
    private final RulerFigure ruler;
    private Scene scene;

    /** An axis without stages. */
    public AxisFigure(Look look) {
        this.look = look;
        base = new StageFigure(look);
        ruler = new RulerFigure(look);
        add(base);
        add(stages);
        add(ruler);
        add(marks);
    }

    /** Where the figures of targets belong. */
    public IFigure marks() {
        return marks;
    }

    /** Where the figures of the stages belong. */
    public IFigure stages() {
        return stages;
    }

    /** Shows a scene. The stages are shown it by their own parts. */
    public void show(Scene shown, String title, String position, LabelFigure.Words baseWords) {
        scene = shown;
        setPreferredSize(new Dimension(shown.mapping().width(), shown.bands().height()));
        stages.setBounds(new Rectangle(0, 0, Math.max(getPreferredSize().width, shown.left() + shown.width()),
                Math.max(getPreferredSize().height, shown.top() + shown.height())));
        base.show(shown, -1, "base", "", baseWords);
        ruler.show(shown, title, position);
        marks.setBounds(ruler.getBounds());
        repaint();
    }

    /**
     * Marks a place on the ruler that is pointed at elsewhere in the window, or none.
     *
     * @param place on the unrolled axis
     * @param words its position in words
     */
    public void point(OptionalDouble place, String words) {
        ruler.point(place, words);
    }

    /** Marks on the ruler the positions that can be reached, as offsets from a place. */
    public void showDots(double from, Dots found) {
        ruler.showDots(from, found);
    }

    /** Marks the base as selected, or not. */
    public void setSelected(boolean marked) {
        base.setSelected(marked);
    }

    @Override
    protected void paintFigure(Graphics graphics) {
        graphics.setBackgroundColor(look.ground());
        graphics.fillRectangle(getBounds());
        if (scene == null) {
            return;
        }
        graphics.setBackgroundColor(look.panel());
        graphics.fillRectangle(new Rectangle(scene.left(), getBounds().y, Mapping.GUTTER, getBounds().height));
        graphics.setForegroundColor(look.hair());
        int edge = scene.left() + Mapping.GUTTER - 1;
        graphics.drawLine(edge, getBounds().y, edge, getBounds().bottom());
        int x = SceneFigure.whole(scene.mapping().px(scene.places().carriage()));
        if (x > edge) {
            graphics.setForegroundColor(look.mark());
            for (int y = scene.top() + Bands.RULER; y < scene.bands().top(); y += 2 * DASH) {
                graphics.drawLine(x, y, x, Math.min(y + DASH, scene.bands().top()) - 1);
            }
        }
        if (scene.places().stages().isEmpty()) {
            graphics.setForegroundColor(look.ink());
            graphics.setFont(look.plain());
            paintHint(graphics, edge + Mapping.MARGIN, scene.top() + Bands.RULER + Mapping.MARGIN);
        }
    }

    /** What to do first, in as many lines as it takes. */
    private void paintHint(Graphics graphics, int x, int top) {
        int room = scene.left() + scene.width() - Mapping.MARGIN - x;
        String line = "";
        int y = top;
        for (String word : EMPTY.split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && SceneFigure.width(longer, look.plain()) > room) {
                graphics.drawString(line, x, y);
                y += SceneFigure.height(look.plain());
                longer = word;
            }
            line = longer;
        }
        graphics.drawString(line, x, y);
    }

    /** Takes a click only where a stage does, so that the ground is the axis's own. */
    private static final class Stages extends Figure {
        @Override
        public boolean containsPoint(int x, int y) {
            return getChildren().stream().anyMatch(child -> ((IFigure) child).containsPoint(x, y));
        }
    }
}
