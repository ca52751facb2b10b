// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.figures;

import java.util.List;
import java.util.Locale;
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

/** One line of small words on a body that belong to the row beside the line; the graphics has the small font. */
final class RowNotes {
    private static final int SPACE = 6;
    /** Ends of a bracket this far outside are cut off with the rest. */
    private static final int HOOK = 5;
    /** A narrower bracket would be a blot. */
    private static final int LEAST_BRACKET = 12;
    /** A narrower row is not counted along. */
    private static final int LEAST_NUMBERED = 24;

    private final Graphics graphics;
    private final Look look;
    private final Scene scene;
    private final Extent body;
    private final int y;
    private final LabelLane lane;

    /**
     * @param body the pixels of the body
     * @param y the top of the line
     */
    RowNotes(Graphics graphics, Look look, Scene scene, Extent body, int y) {
        this.graphics = graphics;
        this.look = look;
        this.scene = scene;
        this.body = body;
        this.y = y;
        lane = new LabelLane(scene.open(), SPACE);
    }

    /** Marks and tooth numbers of a base row, which stands on the body. */
    void base(int stage) {
        RowPlace row = scene.places().stages().get(stage).base();
        paintWear(row, scene.spec().stages().get(stage).rows().base());
        if (scene.px(row).length() >= LEAST_NUMBERED) {
            paintNumbers(row);
        }
    }

    /** Engaged teeth and marks of a rider row, which hangs below the body. */
    void rider(int stage) {
        // Labels beside a narrow row keep off the edges of its body.
        lane.take(new Extent(body.from(), body.from() + 1));
        lane.take(new Extent(body.to(), body.to() + 1));
        AxisPlaces.Rows rows = scene.places().stages().get(stage);
        paintEngaged(rows);
        paintWear(rows.rider(), scene.spec().stages().get(stage).rows().rider());
    }

    private boolean isSeen(Extent px) {
        return px.to() >= scene.open().from() && px.from() <= scene.open().to();
    }

    private int width(String text) {
        return SceneFigure.width(text, look.small());
    }

    private int height() {
        return SceneFigure.height(look.small());
    }

    /** Text on the body or beside it, so that no line runs through the text. */
    private void paintOver(String text, double x) {
        double end = x + width(text);
        if (x > body.from() && end < body.to()) {
            SceneFigure.drawOver(graphics, text, SceneFigure.whole(x), y, look.body());
        } else if (x > body.to() || end < body.from()) {
            SceneFigure.drawOver(graphics, text, SceneFigure.whole(x), y, look.ground());
        } else {
            graphics.drawString(text, SceneFigure.whole(x), y);
        }
    }

    /** Each mark is named at itself, or not at all: the tip has the words then. */
    private void paintWear(RowPlace row, RowSpec spec) {
        for (WornRange range : spec.worn()) {
            ToothSpan teeth = range.teeth().intersect(row.span());
            Extent px = px(row, range);
            if (teeth.isEmpty() || !isSeen(px)) {
                continue;
            }
            String text = range.wear().name().toLowerCase(Locale.ROOT) + " "
                    + (teeth.count() == 1 ? "" + teeth.first() : teeth.first() + "–" + teeth.last());
            double left = scene.open().intersect(px).middle() - width(text) / 2.0;
            graphics.setForegroundColor(look.wear(range.wear()));
            List<Extent> others = spec.worn().stream().filter(other -> other != range).map(other -> px(row, other)).toList();
            lane.takeAt(new Extent(left, left + width(text)), px, others).ifPresent(x -> paintOver(text, x));
        }
    }

    private Extent px(RowPlace row, WornRange range) {
        return scene.mapping().px(row.extent(range.teeth().intersect(row.span())));
    }

    private void paintNumbers(RowPlace row) {
        Detail detail = scene.detail(row);
        int every = detail.numberEvery(width("0" + row.teeth()) + 2.0 * SPACE);
        ToothSpan seen = row.teethIn(scene.mapping().places(scene.open()));
        graphics.setForegroundColor(look.softInk());
        for (int tooth = (seen.first() + every - 1) / every * every; tooth <= seen.last(); tooth += every) {
            String text = Integer.toString(tooth);
            double middle = scene.mapping().px(row.edge(tooth)) + (detail.teeth() ? detail.pitchPx() / 4 : 0);
            double left = middle - width(text) / 2.0;
            if (lane.take(new Extent(left, left + width(text)))) {
                graphics.drawString(text, SceneFigure.whole(left), y);
            }
        }
    }

    /** A bracket over the engaged teeth, with their number on it, or beside it where it is too narrow. */
    private void paintEngaged(AxisPlaces.Rows rows) {
        int count = rows.engagedRider().count();
        Extent px = scene.mapping().px(count == 0 ? rows.rider().extent() : rows.rider().extent(rows.engagedRider()));
        if (!isSeen(px)) {
            return;
        }
        graphics.setForegroundColor(look.ink());
        if (count > 0 && px.length() > LEAST_BRACKET) {
            paintBracket(px);
        }
        String text = count == 0 ? "no teeth engaged" : count + " engaged";
        Extent seen = scene.open().intersect(px);
        boolean on = seen.length() > width(text) + 4 * SPACE;
        if (!on) {
            lane.take(seen);
        }
        double left = on ? seen.middle() - width(text) / 2.0 : px.to() + SPACE;
        lane.takeNear(new Extent(left, left + width(text))).ifPresent(x -> paintOver(text, x));
    }

    private void paintBracket(Extent px) {
        int left = SceneFigure.whole(Math.max(px.from(), scene.open().from() - HOOK));
        int right = SceneFigure.whole(Math.min(px.to(), scene.open().to() + HOOK)) - 1;
        int line = y + height() / 2;
        int foot = y + height() - 1;
        graphics.drawLine(left, line, right, line);
        graphics.drawLine(left, line, left, foot);
        graphics.drawLine(right, line, right, foot);
    }
}
