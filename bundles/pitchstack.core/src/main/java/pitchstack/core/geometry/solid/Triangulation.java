// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry.solid;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.triangulate.polygon.ConstrainedDelaunayTriangulator;
import pitchstack.core.geometry.Point;

/** Triangles over a polygon with holes, whose corners are those of the polygon and no others. */
final class Triangulation {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private Triangulation() {
    }

    /**
     * Cuts a polygon up.
     *
     * @param rim its outline, in either sense
     * @param holes outlines within it that do not meet each other or the rim
     * @return triangles of three points each, anticlockwise
     */
    static List<Point[]> of(List<Point> rim, List<List<Point>> holes) {
        LinearRing[] inner = holes.stream().map(Triangulation::ring).toArray(LinearRing[]::new);
        Geometry cut = ConstrainedDelaunayTriangulator.triangulate(FACTORY.createPolygon(ring(rim), inner));
        List<Point[]> triangles = new ArrayList<>(cut.getNumGeometries());
        for (int i = 0; i < cut.getNumGeometries(); i++) {
            triangles.add(triangle(cut.getGeometryN(i).getCoordinates()));
        }
        FlatTriangles.mend(triangles);
        return triangles;
    }

    private static Point[] triangle(Coordinate[] c) {
        boolean left = Orientation.index(c[0], c[1], c[2]) == Orientation.COUNTERCLOCKWISE;
        return new Point[] {point(c[0]), point(c[left ? 1 : 2]), point(c[left ? 2 : 1])};
    }

    private static Point point(Coordinate c) {
        return new Point(c.x, c.y);
    }

    private static LinearRing ring(List<Point> points) {
        Coordinate[] coordinates = new Coordinate[points.size() + 1];
        for (int i = 0; i < points.size(); i++) {
            coordinates[i] = new Coordinate(points.get(i).x(), points.get(i).y());
        }
        coordinates[points.size()] = coordinates[0].copy();
        return FACTORY.createLinearRing(coordinates);
    }
}
