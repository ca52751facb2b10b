// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import pitchstack.core.geometry.Point;
import pitchstack.core.geometry.RowShape;
import pitchstack.core.geometry.Side;

/**
 * What is engraved in the side of a row: numbers under a tick, and an arrow along x, the way the row lies on the bed. The
 * tick of a base row stands in the middle of the gap that a rider tooth lies in, that of a rider row in the middle of its
 * tooth, so that they line up: under the tick 0 of the rider stands the index.
 */
final class RowMarks {
    /** A stroke of more is no easier to read. Common practice, no source. */
    private static final double WIDEST_STROKE_MM = 0.8;
    private static final int TICK = 2;
    private static final int GAP = 1;
    /** Height of tick, gap and sign, in strokes. */
    static final int STROKES = TICK + GAP + Glyphs.HEIGHT;
    private static final int ARROW = 7;

    private record Label(double x, String text) {
        int strokes() {
            return text.length() * (Glyphs.WIDTH + GAP) - GAP;
        }
    }

    private final RowPart part;
    private final List<Label> labels;
    private final double stroke;
    private final List<Pocket> pockets = new ArrayList<>();
    private final List<Remark> remarks = new ArrayList<>();

    /**
     * @param part the row
     * @param bandMm how high the strip is that is free for marks
     */
    RowMarks(RowPart part, double bandMm) {
        this.part = part;
        labels = labels(part);
        stroke = stroke(bandMm);
        if (stroke < part.lineMm()) {
            remarks.add(new Remark("no-room-for-marks", "There is no room to engrave numbers and arrow: they need "
                    + Millimetres.of(STROKES * part.lineMm()) + " of the body's thickness beside holes and margins, and "
                    + Millimetres.of(Math.max(0, bandMm)) + " is left; make the body thicker, or number fewer teeth."));
        } else {
            engrave();
        }
    }

    List<Pocket> pockets() {
        return pockets;
    }

    List<Remark> remarks() {
        return remarks;
    }

    private static List<Label> labels(RowPart part) {
        RowShape shape = part.shape();
        return part.numberEvery() <= 0 ? List.of() : IntStream.range(0, shape.teeth())
                .filter(tooth -> (part.firstNumber() + tooth) % part.numberEvery() == 0)
                .mapToObj(tooth -> new Label(shape.side() == Side.BASE ? shape.gapMm(tooth) : shape.toothMm(tooth),
                        Integer.toString(part.firstNumber() + tooth)))
                // After the last tooth of a base row the body ends in the middle of the gap.
                .filter(label -> label.x() < shape.endMm() - shape.leanMm()).toList();
    }

    /** As wide as fits, up and across; the gap between two numbers is as wide as a sign. */
    private double stroke(double bandMm) {
        double widest = Math.min(WIDEST_STROKE_MM, bandMm / STROKES);
        int strokes = labels.stream().mapToInt(Label::strokes).max().orElse(0) + Glyphs.WIDTH;
        return labels.size() < 2 ? widest : Math.min(widest, part.numberEvery() * part.shape().form().pitchMm() / strokes);
    }

    private void engrave() {
        double low = part.shape().startMm() + margin(part);
        double high = part.shape().endMm() - margin(part);
        double free = low;
        boolean arrow = false;
        for (Label label : labels) {
            double width = label.strokes() * stroke;
            double begin = Math.max(low, Math.min(label.x() - width / 2, high - width));
            arrow = arrow || arrow(free, begin - GAP * stroke);
            engrave(label, begin);
            free = begin + width + GAP * stroke;
        }
        if (!arrow && !arrow(free, high)) {
            remarks.add(new Remark("no-room-for-arrow", "There is no room to engrave the arrow of the print direction; print "
                    + "the row with its teeth along x, as it lies in the file."));
        }
    }

    private boolean arrow(double from, double to) {
        boolean fits = to - from >= ARROW * stroke;
        if (fits) {
            add(Glyphs.arrow(), from + (to - from - ARROW * stroke) / 2, 0);
        }
        return fits;
    }

    private void engrave(Label label, double begin) {
        double tick = label.x();
        pockets.add(new Pocket(List.of(at(tick - stroke / 2, STROKES - TICK), at(tick + stroke / 2, STROKES - TICK),
                at(tick + stroke / 2, STROKES), at(tick - stroke / 2, STROKES)), List.of()));
        for (int i = 0; i < label.text().length(); i++) {
            add(Glyphs.of(label.text().charAt(i)), begin + i * (Glyphs.WIDTH + GAP) * stroke, 0);
        }
    }

    /** A sign that reads upright when the row stands as it works, be it with its teeth down. */
    private void add(Pocket sign, double x, double strokesUp) {
        boolean over = part.shape().side() == Side.RIDER;
        Pocket moved = sign.moved(p -> at(x + p.x() * stroke, strokesUp + (over ? Glyphs.HEIGHT - p.y() : p.y())));
        pockets.add(over ? moved.turned() : moved);
    }

    /** A point so many strokes over the foot of the numbers; ticks end a margin below the floor of the gaps. */
    private Point at(double x, double strokesUp) {
        double top = part.shape().form().floorMm() - margin(part);
        return new Point(x, top - (STROKES - strokesUp) * stroke);
    }

    /** What stays between a mark and an edge: two printed lines. */
    static double margin(RowPart part) {
        return 2 * part.lineMm();
    }
}
