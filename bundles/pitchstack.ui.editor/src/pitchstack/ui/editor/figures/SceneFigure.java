// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.figures;

import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import pitchstack.ui.editor.places.Extent;
import pitchstack.ui.editor.places.Scene;

/** A figure that draws a part of a scene. Nothing is drawn before it has been shown one. */
public abstract class SceneFigure extends Figure {
    private final Look look;
    private Scene scene;
    private boolean selected;

    SceneFigure(Look look) {
        this.look = look;
    }

    final Look look() {
        return look;
    }

    final Scene scene() {
        return scene;
    }

    /** Takes the scene and its place in it. */
    final void show(Scene shown, int x, int y, int width, int height) {
        scene = shown;
        setBounds(new Rectangle(x, y, Math.max(0, width), Math.max(0, height)));
        repaint();
    }

    /** Marks the figure as selected, or not. */
    public final void setSelected(boolean marked) {
        selected = marked;
        repaint();
    }

    final boolean isSelected() {
        return selected && look.marksSelection();
    }

    @Override
    protected final void paintFigure(Graphics graphics) {
        if (scene != null) {
            graphics.pushState();
            paintScene(graphics);
            graphics.popState();
        }
    }

    /** Draws; the state of the graphics is put back afterwards. */
    abstract void paintScene(Graphics graphics);

    /** The pixels across that have to be painted. */
    static Extent clip(Graphics graphics) {
        Rectangle clip = graphics.getClip(new Rectangle());
        return new Extent(clip.x, clip.right());
    }

    /** A text, cut with an ellipsis where it is wider than there is room. */
    static String fitting(String text, Font font, int room) {
        if (width(text, font) <= room) {
            return text;
        }
        int kept = text.length();
        while (kept > 1 && width(text.substring(0, kept) + "…", font) > room) {
            kept--;
        }
        return text.substring(0, kept) + "…";
    }

    /** Draws text on a plate of the ground it stands on, so that no line drawn before runs through it. */
    static void drawOver(Graphics graphics, String text, int x, int y, Color ground) {
        Font font = graphics.getFont();
        graphics.setBackgroundColor(ground);
        graphics.fillRectangle(x - 2, y + 1, width(text, font) + 4, height(font) - 2);
        graphics.drawString(text, x, y);
    }

    static int width(String text, Font font) {
        return FigureUtilities.getTextExtents(text, font).width;
    }

    static int height(Font font) {
        return FigureUtilities.getFontMetrics(font).getHeight();
    }

    /** A whole pixel, also for places far outside. */
    static int whole(double px) {
        return (int) Math.round(Math.max(-1e9, Math.min(1e9, px)));
    }
}
