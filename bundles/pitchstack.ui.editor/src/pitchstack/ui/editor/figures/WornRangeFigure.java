// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.figures;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.draw2d.Graphics;
import pitchstack.core.stack.ToothSpan;
import pitchstack.core.stack.Wear;
import pitchstack.core.stack.WornRange;
import pitchstack.ui.editor.figures.FinePen.Corners;
import pitchstack.ui.editor.places.Detail;
import pitchstack.ui.editor.places.Extent;
import pitchstack.ui.editor.places.Hatch;
import pitchstack.ui.editor.places.Scene;
import pitchstack.ui.editor.places.ToothShape;

/** Marked teeth of a row: lines one way where they are worn, crossed lines where they are barred. */
public final class WornRangeFigure extends SceneFigure {
    private static final Hatch RISING = new Hatch(6, true);
    private static final Hatch FALLING = new Hatch(6, false);

    /** A single marked tooth of a long row stays visible. */
    private static final int LEAST_WIDTH = 3;

    private final RowFigure row;
    private WornRange range;

    /** @param row the row's own figure, which has been shown the same scene */
    public WornRangeFigure(Look look, RowFigure row) {
        super(look);
        this.row = row;
    }

    /** Shows marked teeth. */
    public void show(Scene scene, WornRange marked) {
        range = marked;
        Extent px = scene.mapping().px(row.row().extent(marked.teeth().intersect(row.row().span())));
        int left = whole(Math.floor(px.from()));
        show(scene, left, row.getBounds().y, whole(Math.ceil(px.to())) - left, row.getBounds().height);
    }

    @Override
    public boolean containsPoint(int x, int y) {
        return super.containsPoint(x, y) && row.containsPoint(x, y);
    }

    @Override
    void paintScene(Graphics graphics) {
        Extent clip = clip(graphics);
        ToothSpan seen = row.row().teethIn(scene().mapping().places(clip)).intersect(range.teeth());
        if (seen.isEmpty()) {
            return;
        }
        int origin = whole(clip.from());
        graphics.translate(origin, 0);
        graphics.setBackgroundColor(look().wearGround());
        graphics.setForegroundColor(isSelected() ? look().selection() : look().wear(range.wear()));
        graphics.setLineWidth(isSelected() ? 2 : 1);
        paintShapes(graphics, shapes(seen, origin), x(0, origin));
    }

    private double x(int tooth, int origin) {
        return scene().mapping().px(row.row().edge(tooth)) - origin;
    }

    private List<Corners> shapes(ToothSpan seen, int origin) {
        Detail detail = scene().detail(row.row());
        double left = x(seen.first(), origin);
        double right = Math.max(left + LEAST_WIDTH, x(seen.last() + 1, origin));
        int top = detail.teeth() ? row.rootY() : row.bandY();
        List<Corners> shapes = new ArrayList<>();
        shapes.add(new Corners(new double[] {left, right, right, left},
                new double[] {top, top, row.solidY(), row.solidY()}));
        if (detail.teeth()) {
            double[] c = new ToothShape(detail.pitchPx(), Math.abs(row.tipY() - row.rootY())).corners(row.isBase());
            for (int tooth = seen.first(); tooth <= seen.last(); tooth++) {
                double x = x(tooth, origin);
                shapes.add(new Corners(new double[] {x + c[0], x + c[1], x + c[2], x + c[3]},
                        new double[] {row.rootY(), row.tipY(), row.tipY(), row.rootY()}));
            }
        }
        return shapes;
    }

    private void paintShapes(Graphics graphics, List<Corners> shapes, double anchor) {
        try (FinePen solid = new FinePen(graphics); FinePen outline = new FinePen(graphics)) {
            for (Corners shape : shapes) {
                solid.shape(shape);
                outline.shape(shape);
            }
            solid.fill();
            outline.draw();
        }
        for (Corners shape : shapes) {
            hatch(graphics, RISING, shape, anchor);
            if (range.wear() == Wear.BARRED) {
                hatch(graphics, FALLING, shape, anchor);
            }
        }
    }

    /** Line by line: one path of many crossing lines takes far longer to paint. */
    private static void hatch(Graphics graphics, Hatch hatch, Corners shape, double anchor) {
        for (Hatch.Line line : hatch.lines(shape.xs(), shape.ys(), anchor)) {
            graphics.drawLine(whole(line.x1()), whole(line.y1()), whole(line.x2()), whole(line.y2()));
        }
    }
}
