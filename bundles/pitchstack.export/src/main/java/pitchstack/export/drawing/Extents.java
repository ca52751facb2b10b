// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.util.List;
import java.util.stream.DoubleStream;

/** How far marks reach. The width of lines is left out. */
public final class Extents {
    /** How far letters such as g reach below the base line, in capital heights: 0.212 em of 0.688 em. */
    private static final double DESCENT = 0.31;
    private static final int QUARTER = 90;

    private Extents() {
    }

    /**
     * The smallest box that holds the marks.
     *
     * @param marks at least one
     */
    public static Box of(List<? extends Mark> marks, TextMeasure measure) {
        return marks.stream().map(mark -> of(mark, measure)).reduce(Box::union).orElseThrow();
    }

    /** The smallest box that holds a mark. */
    public static Box of(Mark mark, TextMeasure measure) {
        if (mark instanceof Mark.Line line) {
            return of(List.of(line.from(), line.to()));
        } else if (mark instanceof Mark.Path path) {
            return of(path.points());
        } else if (mark instanceof Mark.Area area) {
            return of(area.corners());
        } else if (mark instanceof Mark.Circle circle) {
            return of(List.of(circle.centre())).inset(-circle.radius());
        } else if (mark instanceof Mark.Arc arc) {
            return of(arc);
        }
        return of((Mark.Text) mark, measure);
    }

    private static Box of(List<Point> points) {
        return points.stream().map(point -> new Box(point.x(), point.y(), point.x(), point.y())).reduce(Box::union)
                .orElseThrow();
    }

    /** The ends of an arc, and where it is farthest right, up, left or down. */
    private static Box of(Mark.Arc arc) {
        double firstQuarter = Math.ceil(arc.fromDeg() / QUARTER) * QUARTER;
        DoubleStream quarters = DoubleStream.iterate(firstQuarter, angle -> angle < arc.toDeg(), angle -> angle + QUARTER);
        return of(DoubleStream.concat(quarters, DoubleStream.of(arc.fromDeg(), arc.toDeg()))
                .mapToObj(angle -> on(arc, angle)).toList());
    }

    /** The point of an arc at an angle. */
    static Point on(Mark.Arc arc, double angleDeg) {
        double angle = Math.toRadians(angleDeg);
        return arc.centre().moved(arc.radius() * Math.cos(angle), arc.radius() * Math.sin(angle));
    }

    private static Box of(Mark.Text text, TextMeasure measure) {
        double width = measure.widthMm(text.text(), text.heightMm());
        double before = width * text.anchor().share();
        double below = text.heightMm() * DESCENT;
        Point at = text.at();
        return text.upwards()
                ? new Box(at.x() - text.heightMm(), at.y() - before, at.x() + below, at.y() - before + width)
                : new Box(at.x() - before, at.y() - below, at.x() - before + width, at.y() + text.heightMm());
    }
}
