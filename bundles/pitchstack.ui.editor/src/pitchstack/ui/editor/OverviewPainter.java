// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor;

import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import pitchstack.core.stack.RowSpec;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.WornRange;
import pitchstack.ui.editor.figures.Look;
import pitchstack.ui.editor.places.AxisPlaces;
import pitchstack.ui.editor.places.Extent;
import pitchstack.ui.editor.places.RowPlace;
import pitchstack.ui.editor.places.Scene;

/** Draws an axis in little: bodies and rows as bars, marked teeth, the carriage, and a frame around what is seen. */
final class OverviewPainter {
    private static final int MARGIN = 6;
    private static final int SHADE = 36;
    private static final int LEAST_FRAME = 4;
    private static final int ROW_PARTS = 4;

    private final Look look;

    OverviewPainter(Look look) {
        this.look = look;
    }

    private static double pxPerCount(Rectangle area, Scene scene) {
        return Math.max(1, area.width - 2 * MARGIN) / scene.places().reach().length();
    }

    private static int px(Rectangle area, Scene scene, double place) {
        double px = MARGIN + (place - scene.places().reach().from()) * pxPerCount(area, scene);
        return (int) Math.round(Math.max(-1e6, Math.min(1e6, px)));
    }

    /** The place at a pixel. */
    double place(Rectangle area, Scene scene, double px) {
        return scene.places().reach().from() + (px - MARGIN) / pxPerCount(area, scene);
    }

    /** Where what is seen of the drawing lies. */
    Rectangle frame(Rectangle area, Scene scene) {
        Extent seen = scene.mapping().places(scene.open());
        int left = Math.max(1, px(area, scene, seen.from()));
        int right = Math.min(area.width - 2, px(area, scene, seen.to()));
        double height = Math.max(scene.bands().height(), scene.height());
        int top = 1 + (int) ((area.height - 3) * scene.top() / height);
        int bottom = 1 + (int) ((area.height - 3) * Math.min(1, (scene.top() + scene.height()) / height));
        return new Rectangle(left, top, Math.max(LEAST_FRAME, right - left), Math.max(LEAST_FRAME, bottom - top));
    }

    void paint(GC gc, Rectangle area, Scene scene) {
        gc.setBackground(look.ground());
        gc.fillRectangle(area);
        int bodies = scene.places().bodies().size();
        double each = (area.height - 2.0 * MARGIN) / bodies;
        int row = Math.max(2, (int) (each / ROW_PARTS));
        for (int body = 0; body < bodies; body++) {
            int y = (int) Math.round(area.height - MARGIN - (body + 1) * each);
            bar(gc, area, scene, scene.places().bodies().get(body).extent(), y, Math.max(row, (int) each), look.body());
        }
        for (int j = 0; j < scene.places().stages().size(); j++) {
            int y = (int) Math.round(area.height - MARGIN - (j + 1) * each);
            AxisPlaces.Rows rows = scene.places().stages().get(j);
            StageSpec stage = scene.spec().stages().get(j);
            row(gc, area, scene, rows.rider(), stage, stage.rows().rider(), new Rectangle(0, y - row, 0, row));
            row(gc, area, scene, rows.base(), stage, stage.rows().base(), new Rectangle(0, y, 0, row));
        }
        gc.setForeground(look.mark());
        int carriage = px(area, scene, scene.places().carriage());
        gc.drawLine(carriage, 0, carriage, area.height);
        paintFrame(gc, area, frame(area, scene));
    }

    private static void bar(GC gc, Rectangle area, Scene scene, Extent extent, int y, int height, Color colour) {
        int left = px(area, scene, extent.from());
        gc.setBackground(colour);
        gc.fillRectangle(left, y, Math.max(1, px(area, scene, extent.to()) - left), height);
    }

    private void row(GC gc, Rectangle area, Scene scene, RowPlace place, StageSpec stage, RowSpec spec, Rectangle band) {
        bar(gc, area, scene, place.extent(), band.y, band.height, look.row(stage.source(), true));
        for (WornRange range : spec.worn()) {
            bar(gc, area, scene, place.extent(range.teeth().intersect(place.span())), band.y, band.height,
                    look.wear(range.wear()));
        }
    }

    /** All around the frame is shaded, so that not the line alone tells what is seen. */
    private void paintFrame(GC gc, Rectangle area, Rectangle frame) {
        gc.setBackground(look.ink());
        gc.setAlpha(SHADE);
        gc.fillRectangle(0, 0, frame.x, area.height);
        gc.fillRectangle(frame.x + frame.width, 0, area.width - frame.x - frame.width, area.height);
        gc.setAlpha(255);
        gc.setForeground(look.ink());
        gc.setLineWidth(2);
        gc.drawRectangle(frame.x, frame.y, frame.width, frame.height);
        gc.setLineWidth(1);
    }
}
