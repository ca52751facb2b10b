// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.graphics.Color;
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
     * @param badge what the checks found here, if anything
     */
    public record Words(String name, String facts, String value, String range, String wear, Optional<Badge> badge) { }

    private static final int INDENT = 14;
    private static final int BAR = 5;
    private static final int ABOVE = 5;
    private static final int ROOM = Mapping.GUTTER - INDENT - BAR;

    private Words words = new Words("", "", "", "", "", Optional.empty());

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
        words.badge().ifPresent(badge -> badge.paint(graphics, look(), getBounds().right() - BAR - 2, getBounds().y + ABOVE));
        int y = getBounds().y + ABOVE;
        for (Line line : lines()) {
            graphics.setForegroundColor(line.color());
            graphics.setFont(line.font());
            graphics.drawString(fitting(line.text(), line.font(), ROOM), left + INDENT, y);
            y += height(line.font());
        }
    }

    /** One of the first two lines. */
    Rectangle lineBounds(int line) {
        int name = height(look().bold());
        return new Rectangle(getBounds().x + INDENT - 4, getBounds().y + ABOVE + line * name, Mapping.GUTTER - 2 * INDENT,
                line == 0 ? name : height(look().plain()));
    }

    /** Name and number on one line, of which the name is cut. */
    private String together(String name, String value) {
        String number = " " + value;
        return fitting(name, look().bold(), ROOM - width(number, look().bold())) + number;
    }

    private record Line(String text, Font font, Color color) { }

    /**
     * What there is room for, in the order in which it stands; in a low label the facts and the range go first, and in
     * the lowest the number stands beside the name.
     */
    private List<Line> lines() {
        Line name = new Line(words.name(), look().bold(), look().ink());
        Line facts = new Line(words.facts(), look().plain(), look().softInk());
        Line value = new Line(words.value(), look().large(), look().ink());
        Line range = new Line(words.range(), look().small(), look().softInk());
        Line wear = new Line(words.wear(), look().small(), look().wear(Wear.WORN));
        int free = getBounds().height - ABOVE;
        List<Line> kept = new ArrayList<>();
        for (Line line : List.of(name, value, wear, range, facts)) {
            if (!line.text().isEmpty() && (kept.isEmpty() || height(line.font()) <= free)) {
                kept.add(line);
                free -= height(line.font());
            }
        }
        if (!kept.contains(value) && !words.value().isEmpty()) {
            return List.of(new Line(together(words.name(), words.value()), look().bold(), look().ink()));
        }
        return Stream.of(name, facts, value, range, wear).filter(kept::contains).toList();
    }
}
