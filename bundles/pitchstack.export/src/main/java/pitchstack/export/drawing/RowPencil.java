// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.util.ArrayList;
import java.util.List;
import pitchstack.core.geometry.Clamping;
import pitchstack.core.geometry.ToothOutline;
import pitchstack.export.drawing.BrokenLine.Piece;
import pitchstack.export.drawing.BrokenLine.Stretch;

/** Draws rows of teeth into a broken view; what is left out of the view costs nothing. */
final class RowPencil {
    /** Teeth closer together on paper than this are shown by their pitch line (as ISO 2203 shows a rack, from memory). */
    private static final double LEAST_TOOTH = 1.7;
    /** How far a chord may stand off its arc on paper: a tenth of the narrowest line. */
    private static final double SAG = 0.02;
    /** Two outlines closer than this run into one. */
    private static final double LEAST_CLEARANCE = 0.75;
    private static final double ZIGZAG = 1.4;
    private static final double BEYOND = 2;
    /** The radius of a hole on paper below which only its centre lines are drawn, since its outline would run into a blot. */
    private static final double LEAST_HOLE = 0.75;
    /** How far the centre lines of a hole go beyond it. */
    private static final double CENTRE = 1;

    /** In millimetres of the part: what rounding may take away at the end of a row. */
    private static final double NOTHING = 1e-9;

    private final Pencil pencil;
    private final BrokenLine line;
    private final boolean isToothed;

    /** @param rows all rows that are to be drawn; either all of them show their teeth or none */
    RowPencil(Pencil pencil, BrokenLine line, List<RowView> rows) {
        this.pencil = pencil;
        this.line = line;
        isToothed = rows.stream().allMatch(row -> row.tooth().pitchMm() * line.factor() >= LEAST_TOOTH);
    }

    double x(double x) {
        return line.paper(x);
    }

    double y(double y) {
        return y * line.factor();
    }

    /** Whether single teeth can be told apart. */
    boolean isToothed() {
        return isToothed;
    }

    /**
     * Draws the rows of a stage in mesh. Where the clearance between them is too small on paper to be shown, one edge
     * stands for both.
     */
    void mesh(RowView base, RowView rider) {
        if (!isToothed || base.tooth().clearanceMm() * line.factor() >= LEAST_CLEARANCE) {
            outline(base.plain(), 0, 0);
            outline(rider.plain(), 0, 0);
        } else {
            outline(base.plain(), 0, 0);
            outline(rider.plain(), base.left(), base.right());
        }
    }

    /** Draws a row, but none of its toothed edge between two places. */
    private void outline(RowView row, double hiddenFrom, double hiddenTo) {
        for (Piece piece : line.pieces()) {
            double from = Math.max(piece.from(), row.left());
            double to = Math.min(piece.to(), row.right());
            if (from < to) {
                boolean begins = row.left() >= piece.from();
                boolean ends = row.right() <= piece.to();
                if (hiddenFrom < to && hiddenTo > from) {
                    partly(row, new Stretch(from, to), new Stretch(hiddenFrom, hiddenTo), begins, ends);
                } else {
                    whole(row, from, to, begins, ends);
                }
            }
        }
    }

    private void whole(RowView row, double from, double to, boolean begins, boolean ends) {
        List<Point> outline = new ArrayList<>();
        if (begins) {
            outline.add(new Point(from, row.back()));
        }
        outline.addAll(visible(row, from, to));
        if (ends) {
            outline.add(new Point(to, row.back()));
        }
        pencil.path(Pen.OUTLINE, onPaper(outline), begins && ends);
        if (!(begins && ends)) {
            pencil.line(Pen.OUTLINE, x(from), y(row.back()), x(to), y(row.back()));
        }
    }

    private void partly(RowView row, Stretch seen, Stretch hidden, boolean begins, boolean ends) {
        List<Point> back = new ArrayList<>();
        if (begins) {
            back.add(new Point(seen.from(), row.root()));
        }
        back.add(new Point(seen.from(), row.back()));
        back.add(new Point(seen.to(), row.back()));
        if (ends) {
            back.add(new Point(seen.to(), row.root()));
        }
        pencil.path(Pen.OUTLINE, onPaper(back), false);
        if (seen.from() < hidden.from()) {
            pencil.path(Pen.OUTLINE, onPaper(visible(row, seen.from(), hidden.from())), false);
        }
        if (hidden.to() < seen.to()) {
            pencil.path(Pen.OUTLINE, onPaper(visible(row, hidden.to(), seen.to())), false);
        }
    }

    private List<Point> visible(RowView row, double from, double to) {
        return isToothed ? edge(row, from, to, SAG / line.factor())
                : List.of(new Point(from, row.root()), new Point(to, row.root()));
    }

    private List<Point> onPaper(List<Point> points) {
        return points.stream().map(point -> new Point(x(point.x()), y(point.y()))).toList();
    }

    /**
     * The toothed edge between two places of the part, from left to right.
     *
     * @param sagMm how far a chord may stand off its arc
     */
    static List<Point> edge(RowView row, double from, double to, double sagMm) {
        List<pitchstack.core.geometry.Point> tooth = ToothOutline.points(row.tooth(), sagMm);
        List<Point> edge = new ArrayList<>();
        edge.add(new Point(row.left(), row.root()));
        int last = Math.min(row.teeth() - 1, row.toothAt(to + NOTHING));
        for (int i = Math.max(0, row.toothAt(from - NOTHING)); i <= last; i++) {
            double centre = row.centre(i);
            tooth.forEach(point -> edge.add(new Point(centre + point.x(), row.pitchLine() + row.up() * point.y())));
        }
        edge.add(new Point(row.right(), row.root()));
        return clipped(edge, from, to);
    }

    /** A line whose x never falls, cut at two places. */
    private static List<Point> clipped(List<Point> points, double from, double to) {
        List<Point> clipped = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            Point point = points.get(i);
            if (i > 0) {
                Point before = points.get(i - 1);
                if (before.x() < from - NOTHING && point.x() > from + NOTHING) {
                    clipped.add(between(before, point, from));
                }
                if (before.x() < to - NOTHING && point.x() > to + NOTHING) {
                    clipped.add(between(before, point, to));
                }
            }
            if (point.x() >= from - NOTHING && point.x() <= to + NOTHING) {
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

    /** Draws the holes of a row that lie wholly in a piece, with their centre lines. */
    void holes(RowView row) {
        Clamping clamping = row.holes().clamping();
        double y = y(row.back() + row.up() * row.holes().fromBack());
        for (double fromLeft : row.holes().fromLeft()) {
            double x = row.left() + fromLeft;
            double reach = clamping.lengthMm() / 2;
            if (line.pieces().stream().anyMatch(piece -> piece.holds(x - reach) && piece.holds(x + reach))) {
                hole(x(x), y, clamping.diameterMm() / 2 * line.factor(),
                        (clamping.lengthMm() - clamping.diameterMm()) / 2 * line.factor());
            }
        }
    }

    private void hole(double x, double y, double radius, double straight) {
        if (radius >= LEAST_HOLE && straight == 0) {
            pencil.circle(Pen.OUTLINE, x, y, radius);
        } else if (radius >= LEAST_HOLE) {
            pencil.arc(Pen.OUTLINE, new Point(x + straight, y), radius, -90, 90);
            pencil.arc(Pen.OUTLINE, new Point(x - straight, y), radius, 90, 270);
            pencil.line(Pen.OUTLINE, x - straight, y - radius, x + straight, y - radius);
            pencil.line(Pen.OUTLINE, x - straight, y + radius, x + straight, y + radius);
        }
        pencil.line(Pen.CHAIN, x - straight - radius - CENTRE, y, x + straight + radius + CENTRE, y);
        pencil.line(Pen.CHAIN, x, y - radius - CENTRE, x, y + radius + CENTRE);
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
