// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry.solid;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import pitchstack.core.geometry.Point;
import pitchstack.core.geometry.RowShape;
import pitchstack.core.geometry.ToothOutline;

/** Sends a row piece by piece, each from one cut to the next; the corners of a cut belong to both. */
final class RowPieces {
    private record Shape<T>(T what, double from, double to) { }

    private final RowShape row;
    private final Extruder extruder;
    private final List<Point> tooth;
    private final List<Shape<List<Point>>> holes;
    private final List<Shape<Pocket>> pockets;
    private Column cutBack;
    private Column cutFloor;

    RowPieces(RowShape row, RowPlan plan, Extruder extruder) {
        this.row = row;
        this.extruder = extruder;
        tooth = ToothOutline.points(row.form(), RowSolid.SAG_MM);
        holes = plan.holes().stream().map(hole -> hole.polygon(RowSolid.SAG_MM))
                .map(ring -> shape(Rings.reversed(ring), ring)).toList();
        pockets = plan.pockets().stream().map(pocket -> shape(pocket, pocket.rim())).toList();
    }

    private static <T> Shape<T> shape(T what, List<Point> ring) {
        return new Shape<>(what, ring.stream().mapToDouble(Point::x).min().orElseThrow(),
                ring.stream().mapToDouble(Point::x).max().orElseThrow());
    }

    /** Whether neither hole nor mark is in the way of a cut in the middle of the gap after a tooth. */
    boolean canCutAfter(int lastTooth) {
        double x = row.gapMm(lastTooth);
        return holes.stream().noneMatch(s -> s.from() <= x && x <= s.to())
                && pockets.stream().noneMatch(s -> s.from() <= x && x <= s.to());
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
        extruder.piece(rim, columns, open, within(holes, left, right), within(pockets, left, right));
    }

    private static <T> List<T> within(List<Shape<T>> shapes, double left, double right) {
        return shapes.stream().filter(s -> left < s.from() && s.to() < right).<T>map(Shape::what).toList();
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
