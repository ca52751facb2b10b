// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.figures;

import java.util.List;
import java.util.OptionalDouble;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;
import pitchstack.ui.editor.places.Extent;
import pitchstack.ui.editor.places.Scene;

/**
 * The words on a body: tooth numbers and marks of the row above it, its name, and below it the engaged teeth and marks
 * of its rider row. Words keep to what is seen, so that a body wider than the window stays named.
 */
public final class NotesFigure extends SceneFigure {
    /** Between a line of text and the edge of its body. */
    private static final int EDGE = 2;
    private static final int SPACE = 6;

    private int body;
    private String name = "";
    private String remark = "";
    private Rectangle named = new Rectangle();

    /** Words for any body. */
    public NotesFigure(Look look) {
        super(look);
    }

    /**
     * Shows the words of a body.
     *
     * @param number the body, 0 being the base
     * @param called its name
     * @param also what is said of it where there is room, or empty
     */
    public void show(Scene scene, int number, String called, String also) {
        body = number;
        name = called;
        remark = also;
        Extent open = scene.open();
        show(scene, whole(open.from()), scene.bands().stageTop(number - 1), whole(open.length()), scene.bands().body());
    }

    /** On the name only, which may stand beside its body. */
    @Override
    public boolean containsPoint(int x, int y) {
        return named.contains(x, y);
    }

    @Override
    void paintScene(Graphics graphics) {
        Extent px = scene().mapping().px(scene().places().bodies().get(body).extent());
        paintName(graphics, px);
        if (!scene().bands().roomy() && !isOneSided()) {
            return;
        }
        graphics.setFont(look().small());
        if (body < scene().places().stages().size()) {
            new RowNotes(graphics, look(), scene(), px, getBounds().y + 1).base(body);
        }
        if (body > 0) {
            int y = getBounds().bottom() - height(look().small()) - 1;
            new RowNotes(graphics, look(), scene(), px, y).rider(body - 1);
        }
    }

    /** The name in the middle of the body; beside it where it is too narrow, and at the side where it is out of sight. */
    private void paintName(Graphics graphics, Extent px) {
        Extent open = scene().open();
        boolean left = px.to() < open.from();
        boolean right = px.from() > open.to();
        if (left || right) {
            graphics.setFont(look().plain());
            graphics.setForegroundColor(look().softInk());
            String text = left ? "◂ " + name : name + " ▸";
            paintMiddle(graphics, text, left ? open.from() + SPACE : open.to() - SPACE - width(text, look().plain()), px);
            return;
        }
        graphics.setFont(look().bold());
        graphics.setForegroundColor(look().ink());
        for (String text : remark.isEmpty() ? List.of(name) : List.of(name + " · " + remark, name)) {
            OptionalDouble x = placeOfName(px, width(text, look().bold()));
            if (x.isPresent()) {
                paintMiddle(graphics, text, x.getAsDouble(), px);
                return;
            }
        }
        paintMiddle(graphics, name, Math.max(open.from() + SPACE, px.middle() - width(name, look().bold()) / 2.0), px);
    }

    /** In the body, right of it or left of it, whichever has room first. */
    private OptionalDouble placeOfName(Extent px, int width) {
        Extent open = scene().open();
        Extent seen = open.intersect(px);
        if (seen.length() > width + 2 * SPACE) {
            return OptionalDouble.of(seen.middle() - width / 2.0);
        }
        double beside = px.to() + 2 * SPACE;
        if (beside + width + SPACE < open.to()) {
            return OptionalDouble.of(beside);
        }
        beside = px.from() - 2 * SPACE - width;
        return beside > open.from() + SPACE ? OptionalDouble.of(beside) : OptionalDouble.empty();
    }

    /** Whether it is lower than three lines, but has one row only, whose line it can hold: the base, or the carriage. */
    private boolean isOneSided() {
        return !scene().bands().roomy() && scene().bands().roomyOnOneSide()
                && (body == 0 || body == scene().places().stages().size());
    }

    private void paintMiddle(Graphics graphics, String text, double x, Extent px) {
        int free = getBounds().height - height(graphics.getFont());
        int above = !isOneSided() ? free / 2 : body == 0 ? free - EDGE : EDGE;
        boolean beside = x > px.to() || x + width(text, graphics.getFont()) < px.from();
        drawOver(graphics, text, whole(x), getBounds().y + above, beside ? look().ground() : look().body());
        named = new Rectangle(whole(x), getBounds().y + above, width(text, graphics.getFont()), height(graphics.getFont()));
    }
}
