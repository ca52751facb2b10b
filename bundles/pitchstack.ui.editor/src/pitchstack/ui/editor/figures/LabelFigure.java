// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.figures;

import org.eclipse.draw2d.Graphics;
import org.eclipse.swt.graphics.Font;
import pitchstack.core.stack.Wear;
import pitchstack.ui.editor.places.Mapping;
import pitchstack.ui.editor.places.Scene;

/** The label at the left of a stage or of the base; it stays where it is while the teeth scroll. */
public final class LabelFigure extends SceneFigure {
    /**
     * What it says.
     *
     * @param name what it is called
     * @param facts below the name
     * @param value the number to be seen first, or empty
     * @param range what goes with the number
     * @param wear what is wrong with the engaged teeth, or empty
     */
    public record Words(String name, String facts, String value, String range, String wear) { }

    private static final int INDENT = 14;
    private static final int BAR = 5;

    private Words words = new Words("", "", "", "", "");

    /** A label of any stage. */
    public LabelFigure(Look look) {
        super(look);
    }

    /** Shows words at a height of the drawing. */
    public void show(Scene scene, int top, int height, Words said) {
        words = said;
        show(scene, scene.left(), top, Mapping.GUTTER, height);
    }

    @Override
    void paintScene(Graphics graphics) {
        int left = getBounds().x;
        graphics.setBackgroundColor(isSelected() ? look().ground() : look().panel());
        graphics.fillRectangle(getBounds());
        graphics.setForegroundColor(look().hair());
        graphics.drawLine(left, getBounds().y, getBounds().right() - 1, getBounds().y);
        graphics.drawLine(getBounds().right() - 1, getBounds().y, getBounds().right() - 1, getBounds().bottom());
        if (isSelected()) {
            graphics.setBackgroundColor(look().selection());
            graphics.fillRectangle(left, getBounds().y, BAR, getBounds().height);
        }
        int y = line(graphics, words.name(), look().bold(), getBounds().y + 6);
        graphics.setForegroundColor(look().softInk());
        y = line(graphics, words.facts(), look().plain(), y);
        if (!words.value().isEmpty()) {
            y = line(graphics, words.value(), look().large(), y + 2);
        }
        graphics.setForegroundColor(look().softInk());
        y = line(graphics, words.range(), look().small(), y);
        graphics.setForegroundColor(look().wear(Wear.WORN));
        line(graphics, words.wear(), look().small(), y);
    }

    private int line(Graphics graphics, String text, Font font, int y) {
        if (font != look().plain() && font != look().small()) {
            graphics.setForegroundColor(look().ink());
        }
        graphics.setFont(font);
        graphics.drawString(fitting(text, font), getBounds().x + INDENT, y);
        return text.isEmpty() ? y : y + height(font);
    }

    /** The text, cut with an ellipsis where it is too long; the tooltip has all of it. */
    private static String fitting(String text, Font font) {
        int room = Mapping.GUTTER - INDENT - BAR;
        if (width(text, font) <= room) {
            return text;
        }
        int kept = text.length();
        while (kept > 1 && width(text.substring(0, kept) + "…", font) > room) {
            kept--;
        }
        return text.substring(0, kept) + "…";
    }
}
