// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry.solid;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import pitchstack.core.geometry.Point;
import pitchstack.core.geometry.RowShape;
import pitchstack.core.geometry.ToothOutline;

/** Sends a row piece by piece, each from one cut to the next; the corners of a cut belong to both. */
final class RowPieces {
    private record Shape<T>(T what, double from, double to) { }

    /** Shapes from left to right, of which each piece takes its own: in a long row there are thousands. */
    private static final class Waiting<T> {
        private final List<Shape<T>> shapes;
        private int next;

        Waiting(Stream<Shape<T>> shapes) {
            this.shapes = shapes.sorted(Comparator.comparingDouble(Shape::from)).toList();
        }

        /** Whether one of them stands over a place that none taken so far reaches. */
        boolean cover(double x) {
            boolean covers = false;
            for (int i = next; i < shapes.size() && shapes.get(i).from() <= x && !covers; i++) {
                covers = x <= shapes.get(i).to();
            }
            return covers;
        }

        /** Takes those on the left of a place. */
        List<T> takeTo(double x) {
            List<T> taken = new ArrayList<>();
            for (; next < shapes.size() && shapes.get(next).from() < x; next++) {
                taken.add(shapes.get(next).what());
            }
            return taken;
        }
    }

    private final RowShape row;
    private final Extruder extruder;
    private final List<Point> tooth;
    private final Waiting<List<Point>> holes;
    private final Waiting<Pocket> pockets;
    private Column cutBack;
    private Column cutFloor;

    RowPieces(RowShape row, RowPlan plan, Extruder extruder) {
        this.row = row;
        this.extruder = extruder;
        tooth = ToothOutline.points(row.form(), RowSolid.SAG_MM);
        holes = new Waiting<>(plan.holes().stream().map(hole -> hole.polygon(RowSolid.SAG_MM))
                .map(ring -> shape(Rings.reversed(ring), ring)));
        pockets = new Waiting<>(plan.pockets().stream().map(pocket -> shape(pocket, pocket.rim())));
    }

    private static <T> Shape<T> shape(T what, List<Point> ring) {
        return new Shape<>(what, ring.stream().mapToDouble(Point::x).min().orElseThrow(),
                ring.stream().mapToDouble(Point::x).max().orElseThrow());
    }

    /** Whether neither hole nor mark is in the way of a cut in the middle of the gap after a tooth. */
    boolean canCutAfter(int lastTooth) {
        double x = row.gapMm(lastTooth);
        return !holes.cover(x) && !pockets.cover(x);
    }

    /** Sends teeth {@code from} to {@code to − 1} with the body behind them. */
    void send(int from, int to) {
        boolean first = from == 0;
        boolean last = to == row.teeth();
        double left = first ? row.startMm() : row.gapMm(from - 1);
        double right = last ? row.endMm() : row.gapMm(to - 1);
        List<Point> rim = new ArrayList<>();
        List<Column> columns = new ArrayList<>();
        rim.add(new Point(left, row.backMm()));
        columns.add(first ? extruder.column(rim.get(0)) : cutBack);
        Column floor = first ? surface(new Point(left, row.form().floorMm()), 0) : cutFloor;
        rim.add(new Point(right, row.backMm()));
        columns.add(extruder.column(rim.get(1)));
        rim.add(new Point(right, row.form().floorMm()));
        columns.add(surface(rim.get(2), last ? 0 : row.leanMm()));
        cutBack = columns.get(1);
        cutFloor = columns.get(2);
        for (Point point : teeth(from, to)) {
            rim.add(point);
            columns.add(surface(point, row.leanMm()));
        }
        rim.add(new Point(left, row.form().floorMm()));
        columns.add(floor);
        boolean[] open = new boolean[rim.size()];
        open[1] = !last;
        open[rim.size() - 1] = !first;
        // Between two cuts, as many teeth have the same shape wherever they stand.
        extrude(first || last ? 0 : to - from, rim, columns, open);
    }

    /** @param alike the number of a shape that others have too, 0 for one of its own */
    private void extrude(int alike, List<Point> rim, List<Column> columns, boolean[] open) {
        List<List<Point>> drilled = holes.takeTo(rim.get(1).x());
        List<Pocket> engraved = pockets.takeTo(rim.get(1).x());
        if (alike == 0 || !drilled.isEmpty() || !engraved.isEmpty()) {
            extruder.piece(rim, columns, open, drilled, engraved);
        } else {
            extruder.plainPiece(alike, rim, columns, open);
        }
    }

    /** The surface of teeth, from right to left. */
    private List<Point> teeth(int from, int to) {
        List<Point> points = new ArrayList<>();
        for (int i = from; i < to; i++) {
            double middle = row.toothMm(i);
            tooth.forEach(p -> points.add(new Point(middle + p.x(), p.y())));
        }
        Collections.reverse(points);
        return points;
    }

    private Column surface(Point at, double aheadMm) {
        return row.leanMm() == 0 ? extruder.column(at) : extruder.leaning(at, aheadMm);
    }
}
