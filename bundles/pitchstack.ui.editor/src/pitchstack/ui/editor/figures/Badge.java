// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.figures;

import org.eclipse.draw2d.Graphics;
import pitchstack.core.check.Severity;

/**
 * A mark that something was found here: the shape says how bad it is, not the colour alone.
 *
 * @param worst how bad the worst of it is
 * @param count how many findings there are
 */
public record Badge(Severity worst, int count) {
    /** Its height and least width. */
    static final int SIZE = 16;

    /** Draws it with its top right corner at a point, and gives its width. */
    int paint(Graphics graphics, Look look, int right, int top) {
        String number = count > 1 ? String.valueOf(count) : "";
        int width = SIZE + (number.isEmpty() ? 0 : 3 + SceneFigure.width(number, look.small()));
        int x = right - width;
        graphics.setForegroundColor(look.finding(worst));
        graphics.setBackgroundColor(look.finding(worst));
        switch (worst) {
            case ERROR -> paintError(graphics, look, x, top);
            case WARNING -> paintWarning(graphics, look, x, top);
            case NOTE -> paintNote(graphics, x, top);
        }
        if (!number.isEmpty()) {
            graphics.setFont(look.small());
            graphics.setForegroundColor(look.finding(worst));
            graphics.drawString(number, x + SIZE + 2, top + (SIZE - SceneFigure.height(look.small())) / 2);
        }
        return width;
    }

    /** A filled disc with a cross. */
    private static void paintError(Graphics graphics, Look look, int x, int y) {
        graphics.fillOval(x + 1, y + 1, SIZE - 2, SIZE - 2);
        graphics.setForegroundColor(look.ground());
        graphics.setLineWidth(2);
        graphics.drawLine(x + 5, y + 5, x + 11, y + 11);
        graphics.drawLine(x + 11, y + 5, x + 5, y + 11);
        graphics.setLineWidth(1);
    }

    /** A filled triangle with a stroke and a point. */
    private static void paintWarning(Graphics graphics, Look look, int x, int y) {
        graphics.fillPolygon(new int[] {x + 8, y + 1, x + 15, y + 15, x + 1, y + 15});
        graphics.setForegroundColor(look.ground());
        graphics.setLineWidth(2);
        graphics.drawLine(x + 8, y + 6, x + 8, y + 10);
        graphics.drawLine(x + 8, y + 12, x + 8, y + 13);
        graphics.setLineWidth(1);
    }

    /** An open square with a point and a stroke. */
    private static void paintNote(Graphics graphics, int x, int y) {
        graphics.drawRectangle(x + 2, y + 2, SIZE - 5, SIZE - 5);
        graphics.setLineWidth(2);
        graphics.drawLine(x + 8, y + 5, x + 8, y + 6);
        graphics.drawLine(x + 8, y + 8, x + 8, y + 11);
        graphics.setLineWidth(1);
    }
}
