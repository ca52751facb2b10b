// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.figures;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.eclipse.draw2d.Graphics;
import pitchstack.core.stack.RowSpec;
import pitchstack.core.stack.ToothSpan;
import pitchstack.core.stack.WornRange;
import pitchstack.ui.editor.places.AxisPlaces;
import pitchstack.ui.editor.places.Detail;
import pitchstack.ui.editor.places.Extent;
import pitchstack.ui.editor.places.LabelLane;
import pitchstack.ui.editor.places.RowPlace;
import pitchstack.ui.editor.places.Scene;

/**
 * The words on a body: tooth numbers and marks of the row above it, its name, and below it the engaged teeth and marks
 * of its rider row. Words keep to what is seen, so that a body wider than the window stays named. It never takes a click.
 */
public final class NotesFigure extends SceneFigure {
    private static final int SPACE = 6;
    /** Ends of a bracket this far outside are cut off with the rest. */
    private static final int HOOK = 5;

    /** A narrower bracket would be a blot. */
    private static final int LEAST_BRACKET = 12;
    /** A narrower row is not counted along. */
    private static final int LEAST_NUMBERED = 24;

    private int body;
    private String name = "";
    private String remark = "";

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

    @Override
    public boolean containsPoint(int x, int y) {
        return false;
    }

    @Override
    void paintScene(Graphics graphics) {
        Extent px = scene().mapping().px(scene().places().bodies().get(body).extent());
        paintName(graphics, px);
        graphics.setFont(look().small());
        if (body < scene().places().stages().size()) {
            LabelLane lane = new LabelLane(scene().open(), SPACE);
            AxisPlaces.Rows rows = scene().places().stages().get(body);
            RowSpec spec = scene().spec().stages().get(body).rows().base();
            paintWear(graphics, lane, rows.base(), spec, getBounds().y + 1);
            paintNumbers(graphics, lane, rows.base());
        }
        if (body > 0) {
            LabelLane lane = new LabelLane(scene().open(), SPACE);
            // Labels beside a narrow row keep off the edges of its body.
            lane.take(new Extent(px.from(), px.from() + 1));
            lane.take(new Extent(px.to(), px.to() + 1));
            AxisPlaces.Rows rows = scene().places().stages().get(body - 1);
            paintEngaged(graphics, lane, rows);
            RowSpec spec = scene().spec().stages().get(body - 1).rows().rider();
            paintWear(graphics, lane, rows.rider(), spec, getBounds().bottom() - height(look().small()) - 1);
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
            paintMiddle(graphics, text, left ? open.from() + SPACE : open.to() - SPACE - width(text, look().plain()));
            return;
        }
        graphics.setFont(look().bold());
        graphics.setForegroundColor(look().ink());
        for (String text : remark.isEmpty() ? List.of(name) : List.of(name + " · " + remark, name)) {
            OptionalDouble x = placeOfName(px, width(text, look().bold()));
            if (x.isPresent()) {
                paintMiddle(graphics, text, x.getAsDouble());
                return;
            }
        }
        paintMiddle(graphics, name, Math.max(open.from() + SPACE, px.middle() - width(name, look().bold()) / 2.0));
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

    private void paintMiddle(Graphics graphics, String text, double x) {
        graphics.drawString(text, whole(x), getBounds().y + (getBounds().height - height(graphics.getFont())) / 2);
    }

    /** Text on the body, so that no line of it runs through the text. */
    private void paintOver(Graphics graphics, String text, double x, int y) {
        Extent px = scene().mapping().px(scene().places().bodies().get(body).extent());
        int width = width(text, look().small());
        if (x > px.from() && x + width < px.to()) {
            graphics.setBackgroundColor(look().body());
            graphics.fillRectangle(whole(x) - 2, y + 1, width + 4, height(look().small()) - 2);
        }
        graphics.drawString(text, whole(x), y);
    }

    private void paintWear(Graphics graphics, LabelLane lane, RowPlace row, RowSpec spec, int y) {
        for (WornRange range : spec.worn()) {
            ToothSpan teeth = range.teeth().intersect(row.span());
            Extent px = scene().mapping().px(row.extent(teeth));
            if (teeth.isEmpty() || px.to() < scene().open().from() || px.from() > scene().open().to()) {
                continue;
            }
            String text = range.wear().name().toLowerCase(Locale.ROOT) + " "
                    + (teeth.count() == 1 ? "" + teeth.first() : teeth.first() + "–" + teeth.last());
            double half = width(text, look().small()) / 2.0;
            double middle = scene().open().intersect(px).middle();
            OptionalDouble x = lane.takeNear(new Extent(middle - half, middle + half));
            graphics.setForegroundColor(look().wear(range.wear()));
            x.ifPresent(at -> paintOver(graphics, text, at, y));
        }
    }

    private void paintNumbers(Graphics graphics, LabelLane lane, RowPlace row) {
        if (scene().px(row).length() < LEAST_NUMBERED) {
            return;
        }
        Detail detail = scene().detail(row);
        int every = detail.numberEvery(width("0" + row.teeth(), look().small()) + 2.0 * SPACE);
        ToothSpan seen = row.teethIn(scene().mapping().places(scene().open()));
        graphics.setForegroundColor(look().softInk());
        for (int tooth = (seen.first() + every - 1) / every * every; tooth <= seen.last(); tooth += every) {
            String text = Integer.toString(tooth);
            double middle = scene().mapping().px(row.edge(tooth)) + (detail.teeth() ? detail.pitchPx() / 4 : 0);
            int width = width(text, look().small());
            if (lane.take(new Extent(middle - width / 2.0, middle + width / 2.0))) {
                graphics.drawString(text, whole(middle - width / 2.0), getBounds().y + 1);
            }
        }
    }

    /** A bracket over the engaged teeth, with their number on it, or beside it where it is too narrow. */
    private void paintEngaged(Graphics graphics, LabelLane lane, AxisPlaces.Rows rows) {
        int count = rows.engagedRider().count();
        String text = count == 0 ? "no teeth engaged" : count + " engaged";
        int width = width(text, look().small());
        Extent px = scene().mapping().px(count == 0 ? rows.rider().extent() : rows.rider().extent(rows.engagedRider()));
        if (px.to() < scene().open().from() || px.from() > scene().open().to()) {
            return;
        }
        graphics.setForegroundColor(look().ink());
        if (count > 0 && px.length() > LEAST_BRACKET) {
            paintBracket(graphics, px, getBounds().bottom() - height(look().small()) / 2 - 1);
        }
        Extent seen = scene().open().intersect(px);
        boolean on = seen.length() > width + 4 * SPACE;
        if (!on) {
            lane.take(seen);
        }
        double left = on ? seen.middle() - width / 2.0 : px.to() + SPACE;
        lane.takeNear(new Extent(left, left + width))
                .ifPresent(x -> paintOver(graphics, text, x, getBounds().bottom() - height(look().small()) - 1));
    }

    private void paintBracket(Graphics graphics, Extent px, int y) {
        int left = whole(Math.max(px.from(), scene().open().from() - HOOK));
        int right = whole(Math.min(px.to(), scene().open().to() + HOOK)) - 1;
        graphics.drawLine(left, y, right, y);
        graphics.drawLine(left, y, left, getBounds().bottom() - 2);
        graphics.drawLine(right, y, right, getBounds().bottom() - 2);
    }
}
