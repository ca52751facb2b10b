// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.figures;

import org.eclipse.draw2d.Graphics;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.ToothSpan;
import pitchstack.ui.editor.figures.FinePen.Corners;
import pitchstack.ui.editor.places.AxisPlaces;
import pitchstack.ui.editor.places.Bands;
import pitchstack.ui.editor.places.Detail;
import pitchstack.ui.editor.places.Extent;
import pitchstack.ui.editor.places.RowPlace;
import pitchstack.ui.editor.places.Scene;
import pitchstack.ui.editor.places.ToothShape;

/** The teeth of a row and the strip they stand on; where teeth would be too narrow, a band with ticks. */
public final class RowFigure extends SceneFigure {
    /** Tips stop short of the roots they go into, as they do in metal. */
    private static final int TIP_CLEARANCE = 3;
    private static final int MARK = 4;
    /** On a narrower row the mark would hide it. */
    private static final int LEAST_MARKED = 24;

    private final boolean base;
    private int stage;

    /** @param base whether it is a base row, which stands up, or a rider row, which hangs down */
    public RowFigure(Look look, boolean base) {
        super(look);
        this.base = base;
    }

    /** Shows the row of a stage, 0 being the lowest. */
    public void show(Scene scene, int number) {
        stage = number;
        AxisPlaces.Rows rows = scene.places().stages().get(number);
        Extent px = scene.px(base ? rows.base() : rows.rider());
        int left = whole(Math.floor(px.from()));
        int top = base ? scene.bands().teethTop(number, true) : scene.bands().riderTop(number);
        show(scene, left, top, whole(Math.ceil(px.to())) + 1 - left, Bands.STRIP + scene.bands().teeth());
    }

    /** Both rows share the height of the teeth; each answers for its half. */
    @Override
    public boolean containsPoint(int x, int y) {
        return super.containsPoint(x, y) && scene() != null
                && base == y >= scene().bands().teethTop(stage, base) + scene().bands().teeth() / 2;
    }

    boolean isBase() {
        return base;
    }

    /** Where the row stands in the scene shown last. */
    public RowPlace row() {
        AxisPlaces.Rows rows = scene().places().stages().get(stage);
        return base ? rows.base() : rows.rider();
    }

    /** Where the strip ends that the teeth stand on. */
    int solidY() {
        return base ? rootY() + Bands.STRIP : scene().bands().riderTop(stage);
    }

    int rootY() {
        return base ? scene().bands().baseTop(stage) : scene().bands().teethTop(stage);
    }

    int tipY() {
        return base ? scene().bands().teethTop(stage, true) + TIP_CLEARANCE
                : scene().bands().teethTop(stage) + scene().bands().teeth() - TIP_CLEARANCE;
    }

    /** Where a band ends, which stands for teeth that are too narrow. */
    int bandY() {
        return scene().bands().teethTop(stage, base) + scene().bands().teeth() / 2;
    }

    @Override
    void paintScene(Graphics graphics) {
        Extent clip = clip(graphics);
        ToothSpan seen = row().teethIn(scene().mapping().places(clip));
        if (seen.isEmpty()) {
            return;
        }
        AxisPlaces.Rows rows = scene().places().stages().get(stage);
        ToothSpan engaged = base ? rows.engagedBase() : rows.engagedRider();
        int origin = whole(clip.from());
        graphics.translate(origin, 0);
        if (engaged.isEmpty()) {
            paintRun(graphics, seen, origin, false);
        } else {
            paintRun(graphics, seen.intersect(new ToothSpan(0, engaged.first() - 1)), origin, false);
            paintRun(graphics, seen.intersect(engaged), origin, true);
            paintRun(graphics, seen.intersect(new ToothSpan(engaged.last() + 1, seen.last())), origin, false);
        }
        paintMark(graphics, origin);
        if (isSelected()) {
            paintSelection(graphics, origin);
        }
    }

    private void paintRun(Graphics graphics, ToothSpan run, int origin, boolean engaged) {
        if (run.isEmpty()) {
            return;
        }
        StageSpec spec = scene().spec().stages().get(stage);
        graphics.setBackgroundColor(look().row(spec.source(), engaged));
        graphics.setForegroundColor(look().rowLine(spec.source()));
        Detail detail = scene().detail(row());
        if (detail.teeth()) {
            try (FinePen pen = new FinePen(graphics)) {
                solidEnd(outline(solidStart(pen, run, origin), run, origin), run, origin).fill();
            }
            if (detail.outlines()) {
                try (FinePen pen = new FinePen(graphics)) {
                    outline(pen, run, origin).draw();
                }
            }
        } else {
            paintBand(graphics, run, origin, detail);
        }
    }

    private double x(int tooth, int origin) {
        return scene().mapping().px(row().edge(tooth)) - origin;
    }

    private FinePen solidStart(FinePen pen, ToothSpan run, int origin) {
        return pen.to(x(run.first(), origin), solidY());
    }

    private FinePen outline(FinePen pen, ToothSpan run, int origin) {
        double[] corners = new ToothShape(scene().detail(row()).pitchPx(), Math.abs(tipY() - rootY())).corners(base);
        pen.to(x(run.first(), origin), rootY());
        for (int tooth = run.first(); tooth <= run.last(); tooth++) {
            double x = x(tooth, origin);
            pen.to(x + corners[0], rootY()).to(x + corners[1], tipY());
            pen.to(x + corners[2], tipY()).to(x + corners[3], rootY());
        }
        return pen.to(x(run.last() + 1, origin), rootY());
    }

    private FinePen solidEnd(FinePen pen, ToothSpan run, int origin) {
        return pen.to(x(run.last() + 1, origin), solidY());
    }

    private void paintBand(Graphics graphics, ToothSpan run, int origin, Detail detail) {
        int left = whole(x(run.first(), origin));
        int right = whole(x(run.last() + 1, origin));
        int y = Math.min(solidY(), bandY());
        graphics.fillRectangle(left, y, Math.max(1, right - left), Math.abs(bandY() - solidY()));
        graphics.drawLine(left, bandY(), right, bandY());
        int every = detail.tickEvery();
        for (int tooth = (run.first() + every - 1) / every * every; tooth <= run.last(); tooth += every) {
            int x = whole(x(tooth, origin));
            int length = tooth / every % 10 == 0 ? Math.abs(bandY() - rootY()) : Math.abs(bandY() - rootY()) / 2;
            graphics.drawLine(x, bandY(), x, base ? bandY() + length : bandY() - length);
        }
    }

    /** A triangle in the strip: the rider's first tooth, and the base tooth it stands over at index 0. */
    private void paintMark(Graphics graphics, int origin) {
        int tooth = base ? scene().spec().stages().get(stage).rows().start() : 0;
        if (tooth < 0 || tooth > row().teeth() || scene().px(row()).length() < LEAST_MARKED) {
            return;
        }
        double x = x(tooth, origin);
        double tip = base ? rootY() + 1 : solidY() + Bands.STRIP - 1;
        double foot = solidY();
        graphics.setBackgroundColor(look().ink());
        try (FinePen pen = new FinePen(graphics)) {
            pen.shape(new Corners(new double[] {x, x + MARK, x - MARK}, new double[] {tip, foot, foot})).fill();
        }
    }

    private void paintSelection(Graphics graphics, int origin) {
        graphics.setForegroundColor(look().selection());
        graphics.setLineWidth(2);
        Extent px = scene().px(row());
        int left = Math.max(-4, whole(px.from()) - origin + 1);
        int right = Math.min(scene().width() + 4, whole(px.to()) - origin);
        int top = Math.min(solidY(), bandY());
        graphics.drawRectangle(left, top + 1, right - left - 1, Math.abs(bandY() - solidY()) - 2);
    }
}
