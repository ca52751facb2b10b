// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.util.List;

/** One thing drawn. */
public sealed interface Mark {
    /** The same mark so much to the right and up. */
    Mark moved(double right, double up);

    /** A straight line. */
    record Line(Pen pen, Point from, Point to) implements Mark {
        @Override
        public Line moved(double right, double up) {
            return new Line(pen, from.moved(right, up), to.moved(right, up));
        }
    }

    /**
     * Straight lines from point to point.
     *
     * @param closed whether the last point is joined to the first
     */
    record Path(Pen pen, List<Point> points, boolean closed) implements Mark {
        /** Copies the list. */
        public Path {
            points = List.copyOf(points);
        }

        @Override
        public Path moved(double right, double up) {
            return new Path(pen, points.stream().map(point -> point.moved(right, up)).toList(), closed);
        }
    }

    /**
     * A part of a circle, anticlockwise.
     *
     * @param fromDeg where it begins, from the direction of x
     * @param toDeg where it ends, above {@code fromDeg} by less than 360
     */
    record Arc(Pen pen, Point centre, double radius, double fromDeg, double toDeg) implements Mark {
        @Override
        public Arc moved(double right, double up) {
            return new Arc(pen, centre.moved(right, up), radius, fromDeg, toDeg);
        }
    }

    /** A whole circle. */
    record Circle(Pen pen, Point centre, double radius) implements Mark {
        @Override
        public Circle moved(double right, double up) {
            return new Circle(pen, centre.moved(right, up), radius);
        }
    }

    /** A black area, such as an arrow head. */
    record Area(List<Point> corners) implements Mark {
        /** Copies the list. */
        public Area {
            corners = List.copyOf(corners);
        }

        @Override
        public Area moved(double right, double up) {
            return new Area(corners.stream().map(point -> point.moved(right, up)).toList());
        }
    }

    /**
     * A line of text.
     *
     * @param at where its anchor stands on the base line
     * @param heightMm of its capital letters, as ISO 3098 measures it
     * @param upwards whether it runs upwards, to be read from the right, rather than to the right
     */
    record Text(String text, Point at, double heightMm, Anchor anchor, boolean upwards) implements Mark {
        @Override
        public Text moved(double right, double up) {
            return new Text(text, at.moved(right, up), heightMm, anchor, upwards);
        }
    }
}
