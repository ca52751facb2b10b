// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.util.ArrayList;
import java.util.List;

/** Draws the marks of one part, in millimetres of paper from wherever that part likes. */
final class Pencil {
    /** Text in tables, notes and dimensions (ISO 3098). */
    static final double TEXT = 2.5;
    /** Headings of fields. */
    static final double SMALL = 1.8;
    /** Names of views. */
    static final double HEADING = 3.5;
    /** From one base line to the next, in capital heights; 1.5 is the least of ISO 3098 without accents (from memory). */
    static final double LINE_PITCH = 1.65;

    private final TextMeasure measure;
    private final List<Mark> marks = new ArrayList<>();

    Pencil(TextMeasure measure) {
        this.measure = measure;
    }

    TextMeasure measure() {
        return measure;
    }

    double width(String text, double height) {
        return measure.widthMm(text, height);
    }

    Pencil line(Pen pen, double fromX, double fromY, double toX, double toY) {
        marks.add(new Mark.Line(pen, new Point(fromX, fromY), new Point(toX, toY)));
        return this;
    }

    Pencil path(Pen pen, List<Point> points, boolean closed) {
        marks.add(new Mark.Path(pen, points, closed));
        return this;
    }

    Pencil box(Pen pen, Box box) {
        return path(pen, List.of(new Point(box.left(), box.bottom()), new Point(box.right(), box.bottom()),
                new Point(box.right(), box.top()), new Point(box.left(), box.top())), true);
    }

    Pencil area(Point... corners) {
        marks.add(new Mark.Area(List.of(corners)));
        return this;
    }

    Pencil circle(Pen pen, double x, double y, double radius) {
        marks.add(new Mark.Circle(pen, new Point(x, y), radius));
        return this;
    }

    Pencil arc(Pen pen, Point centre, double radius, double fromDeg, double toDeg) {
        marks.add(new Mark.Arc(pen, centre, radius, fromDeg, toDeg));
        return this;
    }

    Pencil text(String text, double x, double y, double height, Anchor anchor) {
        return text(text, x, y, height, anchor, false);
    }

    Pencil text(String text, double x, double y, double height, Anchor anchor, boolean upwards) {
        if (!text.isEmpty()) {
            marks.add(new Mark.Text(text, new Point(x, y), height, anchor, upwards));
        }
        return this;
    }

    /** Draws what was drawn elsewhere. */
    Pencil marks(List<Mark> drawn, double right, double up) {
        drawn.forEach(mark -> marks.add(mark.moved(right, up)));
        return this;
    }

    List<Mark> marks() {
        return List.copyOf(marks);
    }

    /** What the marks so far take up. */
    Box extent() {
        return Extents.of(marks, measure);
    }

    /** All marks as a part that is as large as they are. */
    Part part(String name) {
        return new Part(name, extent(), marks);
    }
}
