// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.figures;

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

    /** Words for any body. */
    public NotesFigure(Look look) {
        super(look);
    }

    /** Shows the words of a body, 0 being the base. */
    public void show(Scene scene, int number, String called) {
        body = number;
        name = called;
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
        String text = left ? "◂ " + name : right ? name + " ▸" : name;
        graphics.setFont(left || right ? look().plain() : look().bold());
        graphics.setForegroundColor(left || right ? look().softInk() : look().ink());
        int width = width(text, graphics.getFont());
        Extent seen = open.intersect(px);
        double wanted = seen.length() > width + 2 * SPACE ? seen.middle() - width / 2.0
                : px.to() + 2 * SPACE + width < open.to() ? px.to() + 2 * SPACE : px.from() - 2 * SPACE - width;
        double x = Math.max(open.from() + SPACE, Math.min(open.to() - SPACE - width, wanted));
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
