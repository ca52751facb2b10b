// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Finds what runs into each other on a drawing: parts, texts, and lines through texts. Geometry by {@code java.awt.geom}. */
final class Overlaps {
    private static final double ROUNDING = 1e-6;

    private final Drawing drawing;
    private final List<String> found = new ArrayList<>();

    private Overlaps(Drawing drawing) {
        this.drawing = drawing;
    }

    /** One sentence for each; none where all is well. */
    static List<String> in(Drawing drawing) {
        Overlaps overlaps = new Overlaps(drawing);
        overlaps.parts();
        overlaps.texts();
        return overlaps.found;
    }

    private void parts() {
        Box space = drawing.sheet().drawingSpace().inset(-ROUNDING);
        List<Part> parts = drawing.parts().subList(1, drawing.parts().size());
        for (int i = 0; i < parts.size(); i++) {
            Part part = parts.get(i);
            if (!space.holds(part.box())) {
                found.add(part.name() + " leaves the drawing space: " + part.box());
            }
            if (!part.box().inset(-ROUNDING).holds(Extents.of(part.marks(), Devices.LETTERS))) {
                found.add("marks of " + part.name() + " leave its box");
            }
            for (Part other : parts.subList(i + 1, parts.size())) {
                if (part.box().inset(ROUNDING).overlaps(other.box())) {
                    found.add(part.name() + " and " + other.name() + " overlap");
                }
            }
        }
    }

    private void texts() {
        List<Mark> marks = drawing.marks();
        for (int i = 0; i < marks.size(); i++) {
            if (marks.get(i) instanceof Mark.Text text) {
                Box box = Extents.of(text, Devices.LETTERS);
                if (!new Box(0, 0, drawing.sheet().widthMm(), drawing.sheet().heightMm()).holds(box)) {
                    found.add("“" + text.text() + "” leaves the sheet");
                }
                for (int k = 0; k < marks.size(); k++) {
                    if (k != i && (k > i || !(marks.get(k) instanceof Mark.Text)) && isThrough(marks.get(k), box)) {
                        found.add("“" + text.text() + "” at " + text.at() + " runs into " + marks.get(k));
                    }
                }
            }
        }
    }

    private static boolean isThrough(Mark mark, Box text) {
        if (mark instanceof Mark.Line line) {
            return isThrough(line.from(), line.to(), text);
        } else if (mark instanceof Mark.Path path) {
            return isThrough(path.points(), path.closed(), text);
        } else if (mark instanceof Mark.Area area) {
            return isThrough(area.corners(), true, text) || Extents.of(mark, Devices.LETTERS).holds(text);
        } else if (mark instanceof Mark.Circle circle) {
            return isThrough(points(new Mark.Arc(circle.pen(), circle.centre(), circle.radius(), 0, 360)), true, text);
        } else if (mark instanceof Mark.Arc arc) {
            return isThrough(points(arc), false, text);
        }
        return Extents.of(mark, Devices.LETTERS).overlaps(text);
    }

    private static List<Point> points(Mark.Arc arc) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= 36; i++) {
            points.add(Extents.on(arc, arc.fromDeg() + (arc.toDeg() - arc.fromDeg()) * i / 36));
        }
        return points;
    }

    private static boolean isThrough(List<Point> points, boolean closed, Box text) {
        for (int i = 0; i + 1 < points.size(); i++) {
            if (isThrough(points.get(i), points.get(i + 1), text)) {
                return true;
            }
        }
        return closed && isThrough(points.get(points.size() - 1), points.get(0), text);
    }

    private static boolean isThrough(Point from, Point to, Box text) {
        return new Rectangle2D.Double(text.left(), text.bottom(), text.width(), text.height())
                .intersectsLine(new Line2D.Double(from.x(), from.y(), to.x(), to.y()));
    }
}
