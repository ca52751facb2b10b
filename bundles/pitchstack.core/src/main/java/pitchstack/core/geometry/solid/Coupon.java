// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry.solid;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import pitchstack.core.geometry.Point;

/**
 * A part to calibrate a printer with: two arms at a right angle, along x and along y of the bed, with posts at
 * {@link #POSTS_MM}. The distance of two posts is the mean of that over their outer faces and that between their inner
 * faces: what the printer lays on every face is in one and not in the other, and drops out.
 */
public final class Coupon implements Solid {
    /** Where the posts of an arm begin, from the corner. */
    public static final List<Double> POSTS_MM = List.of(0.0, 20.0, 50.0, 100.0);
    /** How wide a post is, along its arm. */
    public static final double POST_MM = 6;
    private static final double LENGTH_MM = POSTS_MM.get(POSTS_MM.size() - 1) + POST_MM;
    private static final double ARM_MM = 8;
    private static final double REACH_MM = 6;
    private static final double HEIGHT_MM = 6;
    private static final double DEPTH_MM = 0.4;
    private static final double STROKE_MM = 0.8;
    /** Letters and arrows stand in the middle of an arm, from here along it. */
    private static final double LETTER_MM = 26;
    private static final double ARROW_MM = 32;
    private static final double SIDE_MM = (ARM_MM - Glyphs.HEIGHT * STROKE_MM) / 2;

    @Override
    public String name() {
        return "Coupon to calibrate a printer";
    }

    @Override
    public Extent extent() {
        return new Extent(LENGTH_MM + REACH_MM, LENGTH_MM + REACH_MM, HEIGHT_MM);
    }

    @Override
    public double volumeMm3() {
        double view = 2 * LENGTH_MM * ARM_MM - ARM_MM * ARM_MM + 2 * POSTS_MM.size() * POST_MM * REACH_MM;
        return view * HEIGHT_MM - marks().stream().mapToDouble(Pocket::areaMm2).sum() * DEPTH_MM;
    }

    @Override
    public void send(TriangleSink sink) {
        Extruder extruder = new Extruder(sink, new Placement(1, 1, -REACH_MM, -REACH_MM, false), HEIGHT_MM, DEPTH_MM);
        List<Point> rim = rim();
        extruder.piece(rim, rim.stream().map(extruder::column).toList(), new boolean[rim.size()], List.of(), marks());
    }

    /** The outline seen from above, as it lies on the bed, anticlockwise, in millimetres. */
    public List<Point> outline() {
        return rim().stream().map(p -> new Point(p.x() + REACH_MM, p.y() + REACH_MM)).toList();
    }

    /** The corner of the arms is the origin; posts stand below the arm along x, and left of that along y. */
    private static List<Point> rim() {
        List<Point> rim = new ArrayList<>();
        rim.add(new Point(0, 0));
        for (double post : POSTS_MM) {
            if (post > 0) {
                rim.add(new Point(post, 0));
            }
            rim.add(new Point(post, -REACH_MM));
            rim.add(new Point(post + POST_MM, -REACH_MM));
            if (post < LENGTH_MM - POST_MM) {
                rim.add(new Point(post + POST_MM, 0));
            }
        }
        rim.add(new Point(LENGTH_MM, ARM_MM));
        rim.add(new Point(ARM_MM, ARM_MM));
        // The arm along y is the other in a mirror, and is gone round the other way.
        List<Point> other = new ArrayList<>(rim.subList(1, rim.size() - 1));
        Collections.reverse(other);
        other.forEach(p -> rim.add(new Point(p.y(), p.x())));
        return rim;
    }

    private static List<Pocket> marks() {
        List<Pocket> marks = new ArrayList<>();
        marks.add(Glyphs.letterX().moved(p -> along(LETTER_MM, p)));
        marks.add(Glyphs.arrow().moved(p -> along(ARROW_MM, p)));
        marks.add(Glyphs.letterY().moved(p -> new Point(SIDE_MM + p.x() * STROKE_MM, LETTER_MM + p.y() * STROKE_MM)));
        marks.add(Glyphs.arrow().moved(p -> {
            Point x = along(ARROW_MM, p);
            return new Point(ARM_MM - x.y(), x.x());
        }));
        return marks;
    }

    private static Point along(double from, Point p) {
        return new Point(from + p.x() * STROKE_MM, SIDE_MM + p.y() * STROKE_MM);
    }
}
