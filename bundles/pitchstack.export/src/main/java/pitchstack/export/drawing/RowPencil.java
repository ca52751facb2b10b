// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.util.ArrayList;
import java.util.List;
import pitchstack.export.drawing.BrokenLine.Piece;

/** Draws rows of teeth into a broken view; what is left out of the view costs nothing. */
final class RowPencil {
    /** Teeth closer together on paper than this are shown by their pitch line (as ISO 2203 shows a rack, from memory). */
    static final double LEAST_TOOTH = 1.6;
    private static final double ZIGZAG = 1.4;
    private static final double BEYOND = 2;

    private final Pencil pencil;
    private final BrokenLine line;

    RowPencil(Pencil pencil, BrokenLine line) {
        this.pencil = pencil;
        this.line = line;
    }

    double x(double x) {
        return line.paper(x);
    }

    double y(double y) {
        return y * line.factor();
    }

    boolean isToothed(RowView row) {
        return row.tooth().pitch() * line.factor() >= LEAST_TOOTH;
    }

    /** Draws the outline of a row, with its teeth where they can be seen. */
    void outline(RowView row, Pen pen) {
        for (Piece piece : line.pieces()) {
            double from = Math.max(piece.from(), row.left());
            double to = Math.min(piece.to(), row.right());
            if (from < to) {
                boolean begins = row.left() >= piece.from();
                boolean ends = row.right() <= piece.to();
                List<Point> outline = new ArrayList<>();
                if (begins) {
                    outline.add(new Point(from, row.back()));
                }
                outline.addAll(isToothed(row) ? edge(row, from, to)
                        : List.of(new Point(from, row.root()), new Point(to, row.root())));
                if (ends) {
                    outline.add(new Point(to, row.back()));
                }
                pencil.path(pen, onPaper(outline), begins && ends);
                if (!(begins && ends)) {
                    pencil.line(pen, x(from), y(row.back()), x(to), y(row.back()));
                }
            }
        }
    }

    private List<Point> onPaper(List<Point> points) {
        return points.stream().map(point -> new Point(x(point.x()), y(point.y()))).toList();
    }

    /** The toothed edge between two places. */
    static List<Point> edge(RowView row, double from, double to) {
        List<Point> corners = new ArrayList<>();
        corners.add(new Point(row.left(), row.root()));
        int last = Math.min(row.teeth() - 1, row.toothAt(to) + 1);
        for (int tooth = Math.max(0, row.toothAt(from) - 1); tooth <= last; tooth++) {
            corners.addAll(row.tooth().corners(row.centre(tooth), row.pitchLine(), row.up()));
        }
        corners.add(new Point(row.right(), row.root()));
        return clipped(corners, from, to);
    }

    /** A line whose x never falls, cut at two places. */
    private static List<Point> clipped(List<Point> points, double from, double to) {
        List<Point> clipped = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            Point point = points.get(i);
            if (i > 0) {
                Point before = points.get(i - 1);
                if (before.x() < from && point.x() > from) {
                    clipped.add(between(before, point, from));
                }
                if (before.x() < to && point.x() > to) {
                    clipped.add(between(before, point, to));
                }
            }
            if (point.x() >= from && point.x() <= to) {
                clipped.add(point);
            }
        }
        return clipped;
    }

    private static Point between(Point before, Point after, double x) {
        double share = (x - before.x()) / (after.x() - before.x());
        return new Point(x, before.y() + share * (after.y() - before.y()));
    }

    /** Draws the pitch line of a row, a little beyond its ends. */
    void pitchLine(RowView row) {
        for (Piece piece : line.pieces()) {
            double from = Math.max(piece.from(), row.left());
            double to = Math.min(piece.to(), row.right());
            if (from < to) {
                double before = row.left() >= piece.from() ? BEYOND : 0;
                double behind = row.right() <= piece.to() ? BEYOND : 0;
                pencil.line(Pen.CHAIN, x(from) - before, y(row.pitchLine()), x(to) + behind, y(row.pitchLine()));
            }
        }
    }

    /** Draws the two lines of each break across the rows that go on behind it. */
    void breaks(List<RowView> rows) {
        for (int i = 1; i < line.pieces().size(); i++) {
            Piece before = line.pieces().get(i - 1);
            Piece behind = line.pieces().get(i);
            List<RowView> crossing = rows.stream()
                    .filter(row -> row.left() < before.to() && row.right() > behind.from()).toList();
            if (!crossing.isEmpty()) {
                double bottom = crossing.stream().mapToDouble(row -> Math.min(row.back(), row.tip())).min().orElseThrow();
                double top = crossing.stream().mapToDouble(row -> Math.max(row.back(), row.tip())).max().orElseThrow();
                double paperBefore = before.paper() + (before.to() - before.from()) * line.factor();
                zigzagUp(paperBefore, y(bottom) - BEYOND, y(top) + BEYOND);
                zigzagUp(behind.paper(), y(bottom) - BEYOND, y(top) + BEYOND);
            }
        }
    }

    private void zigzagUp(double x, double bottom, double top) {
        double middle = (bottom + top) / 2;
        pencil.path(Pen.THIN, List.of(new Point(x, bottom), new Point(x, middle - ZIGZAG),
                new Point(x + ZIGZAG, middle - ZIGZAG / 2), new Point(x - ZIGZAG, middle + ZIGZAG / 2),
                new Point(x, middle + ZIGZAG), new Point(x, top)), false);
    }
}
