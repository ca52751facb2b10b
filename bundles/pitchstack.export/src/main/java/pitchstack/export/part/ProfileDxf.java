// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.part;

import java.util.ArrayList;
import java.util.List;
import pitchstack.core.geometry.Corner;
import pitchstack.core.geometry.Outline;
import pitchstack.core.geometry.Point;
import pitchstack.core.geometry.solid.Placement;
import pitchstack.core.geometry.solid.Pocket;
import pitchstack.core.geometry.solid.RowSolid;
import pitchstack.export.dxf.Anchor;
import pitchstack.export.dxf.DxfR12;
import pitchstack.export.dxf.Layer;
import pitchstack.export.dxf.LineType;
import pitchstack.export.dxf.Vertex;

/**
 * The side views of rows as a DXF drawing, arcs as arcs, at the edge of the face and in the size they are to be printed or
 * milled in. Where the factors along and across the row differ, an arc becomes that through its ends with the same turn,
 * which is off by less than its radius times the difference.
 */
public final class ProfileDxf {
    private static final Layer PROFILE = new Layer("PROFILE");
    private static final Layer HOLES = new Layer("HOLES", 5, LineType.CONTINUOUS);
    private static final Layer MARKS = new Layer("MARKS", 3, LineType.CONTINUOUS);
    private static final Layer PITCH_LINE = new Layer("PITCH_LINE", 1, LineType.CENTER);
    private static final Layer NOTES = new Layer("NOTES", 2, LineType.CONTINUOUS);
    private static final double TEXT_MM = 2.5;
    private static final double LINE_MM = 4;

    private ProfileDxf() {
    }

    /**
     * The text of a file.
     *
     * @param comments what is worth knowing of it, a line each
     * @param plate the rows, at least one
     */
    public static String of(List<String> comments, List<Placed<RowSolid>> plate) {
        DxfR12 drawing = new DxfR12(comments, List.of(PROFILE, HOLES, MARKS, PITCH_LINE, NOTES));
        plate.forEach(placed -> draw(drawing, placed));
        List<String> notes = new ArrayList<>(List.of("ALL LENGTHS ARE MILLIMETRES"));
        plate.forEach(placed -> notes.add(placed.solid().name()));
        notes.addAll(comments);
        for (int i = 0; i < notes.size(); i++) {
            drawing.text(NOTES, 0, -(i + 1) * LINE_MM, TEXT_MM, 0, Anchor.LEFT, notes.get(i));
        }
        return drawing.text();
    }

    private static void draw(DxfR12 drawing, Placed<RowSolid> placed) {
        RowSolid row = placed.solid();
        Placement placement = row.placement();
        drawing.polyline(PROFILE, vertices(row.sideView(), placement, placed.yMm()), true);
        for (Outline hole : row.plan().holes()) {
            drawHole(drawing, vertices(hole, placement, placed.yMm()));
        }
        for (Pocket pocket : row.plan().pockets()) {
            drawing.polyline(MARKS, straight(pocket.rim(), placement, placed.yMm()), true);
            pocket.islands().forEach(ring -> drawing.polyline(MARKS, straight(ring, placement, placed.yMm()), true));
        }
        double y = placement.y(new Point(0, 0)) + placed.yMm();
        drawing.line(PITCH_LINE, 0, y, row.extent().xMm(), y);
    }

    /** Two corners with arcs between them are a circle, which a mill drills. */
    private static void drawHole(DxfR12 drawing, List<Vertex> hole) {
        Vertex a = hole.get(0);
        Vertex b = hole.get(1);
        if (hole.size() == 2) {
            drawing.circle(HOLES, (a.x() + b.x()) / 2, (a.y() + b.y()) / 2, Math.hypot(b.x() - a.x(), b.y() - a.y()) / 2);
        } else {
            drawing.polyline(HOLES, hole, true);
        }
    }

    private static List<Vertex> vertices(Outline outline, Placement placement, double y) {
        List<Vertex> vertices = new ArrayList<>();
        for (Corner corner : outline.corners()) {
            Point at = new Point(corner.x(), corner.y());
            double bulge = placement.mirrored() ? -corner.bulge() : corner.bulge();
            vertices.add(new Vertex(placement.x(at), placement.y(at) + y, bulge));
        }
        return vertices;
    }

    private static List<Vertex> straight(List<Point> ring, Placement placement, double y) {
        return ring.stream().map(p -> new Vertex(placement.x(p), placement.y(p) + y)).toList();
    }
}
