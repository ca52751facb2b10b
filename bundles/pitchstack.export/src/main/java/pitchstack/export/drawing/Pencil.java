// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.util.ArrayList;
import java.util.List;

/** Draws the marks of one part, in millimetres of paper from wherever that part likes. */
public final class Pencil {
    /** Text in tables, notes and dimensions (ISO 3098). */
    public static final double TEXT = 2.5;
    /** Headings of fields. */
    static final double SMALL = 1.8;
    /** Names of views. */
    static final double HEADING = 3.5;
    /** From one base line to the next, in capital heights; 1.5 is the least of ISO 3098 without accents (from memory). */
    public static final double LINE_PITCH = 1.65;

    private static final double BALLOON = 2.6;
    private static final double BALLOON_PAD = 0.9;

    private final TextMeasure measure;
    private final List<Mark> marks = new ArrayList<>();

    /** @param measure the letters */
    public Pencil(TextMeasure measure) {
        this.measure = measure;
    }

    TextMeasure measure() {
        return measure;
    }

    double width(String text, double height) {
        return measure.widthMm(text, height);
    }

    /** Draws a straight line. */
    public Pencil line(Pen pen, double fromX, double fromY, double toX, double toY) {
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

    /**
     * Writes a line of text; an empty one leaves no mark.
     *
     * @param y of the base line
     * @param height of capital letters
     */
    public Pencil text(String text, double x, double y, double height, Anchor anchor) {
        return text(text, x, y, height, anchor, false);
    }

    Pencil text(String text, double x, double y, double height, Anchor anchor, boolean upwards) {
        if (!text.isEmpty()) {
            marks.add(new Mark.Text(text, new Point(x, y), height, anchor, upwards));
        }
        return this;
    }

    /** Draws a label in a circle around a place, and tells the radius. */
    double balloon(String label, double x, double y) {
        double radius = Math.max(BALLOON, width(label, TEXT) / 2 + BALLOON_PAD);
        circle(Pen.THIN, x, y, radius);
        text(label, x, y - TEXT / 2, TEXT, Anchor.MIDDLE);
        return radius;
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
    public Part part(String name) {
        return new Part(name, extent(), marks);
    }
}
