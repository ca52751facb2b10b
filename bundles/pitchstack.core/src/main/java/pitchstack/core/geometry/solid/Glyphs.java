// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry.solid;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pitchstack.core.geometry.Point;

/**
 * Signs to engrave, drawn on squares one stroke wide, three across and five up; a sign stands on y = 0 and begins at
 * x = 0. No two squares of a sign touch at a corner alone, so that every outline is a simple one.
 */
final class Glyphs {
    static final int WIDTH = 3;
    static final int HEIGHT = 5;
    /** From the top row down. */
    private static final Map<Character, String[]> SQUARES = Map.ofEntries(
            Map.entry('0', rows("###", "# #", "# #", "# #", "###")),
            Map.entry('1', rows(" # ", "## ", " # ", " # ", "###")),
            Map.entry('2', rows("###", "  #", "###", "#  ", "###")),
            Map.entry('3', rows("###", "  #", "###", "  #", "###")),
            Map.entry('4', rows("# #", "# #", "###", "  #", "  #")),
            Map.entry('5', rows("###", "#  ", "###", "  #", "###")),
            Map.entry('6', rows("###", "#  ", "###", "# #", "###")),
            Map.entry('7', rows("###", "  #", "  #", "  #", "  #")),
            Map.entry('8', rows("###", "# #", "###", "# #", "###")),
            Map.entry('9', rows("###", "# #", "###", "  #", "###")),
            Map.entry('-', rows("   ", "   ", "###", "   ", "   ")));
    private static final int[][] SIDES = {{0, 0, 1, 0}, {1, 0, 1, 1}, {1, 1, 0, 1}, {0, 1, 0, 0}};

    private Glyphs() {
    }

    private static String[] rows(String... rows) {
        return rows;
    }

    /**
     * The outline of a sign.
     *
     * @param sign a digit or a minus
     * @throws IllegalArgumentException if it is another
     */
    static Pocket of(char sign) {
        String[] rows = SQUARES.get(sign);
        if (rows == null) {
            throw new IllegalArgumentException("There is no sign " + sign);
        }
        List<List<Point>> rings = rings(edges(rows));
        List<Point> rim = rings.stream().filter(ring -> Rings.areaMm2(ring) > 0).findFirst().orElseThrow();
        return new Pocket(rim, rings.stream().filter(ring -> ring != rim).toList());
    }

    /** An arrow along x, as wide as two signs and as high as one. */
    static Pocket arrow() {
        return new Pocket(List.of(new Point(0, 2), new Point(4, 2), new Point(4, 0.5), new Point(7, 2.5), new Point(4, 4.5),
                new Point(4, 3), new Point(0, 3)), List.of());
    }

    /** The letter of the first direction of the bed, four strokes wide. */
    static Pocket letterX() {
        return new Pocket(List.of(new Point(0, 0), new Point(1.2, 0), new Point(2, 1.6), new Point(2.8, 0), new Point(4, 0),
                new Point(2.6, 2.5), new Point(4, 5), new Point(2.8, 5), new Point(2, 3.4), new Point(1.2, 5),
                new Point(0, 5), new Point(1.4, 2.5)), List.of());
    }

    /** The letter of the second direction of the bed, four strokes wide. */
    static Pocket letterY() {
        return new Pocket(List.of(new Point(1.4, 0), new Point(2.6, 0), new Point(2.6, 2.2), new Point(4, 5),
                new Point(2.8, 5), new Point(2, 3.4), new Point(1.2, 5), new Point(0, 5), new Point(1.4, 2.2)), List.of());
    }

    /** The sides of squares that have none beside them, from their begin to their end, with the square on their left. */
    private static Map<Point, Point> edges(String[] rows) {
        Map<Point, Point> edges = new HashMap<>();
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                for (int[] side : SIDES) {
                    // The square on the other side of an edge lies to the right of its direction.
                    int beyondX = x + side[3] - side[1];
                    int beyondY = y - side[2] + side[0];
                    if (isSet(rows, x, y) && !isSet(rows, beyondX, beyondY)) {
                        edges.put(new Point(x + side[0], y + side[1]), new Point(x + side[2], y + side[3]));
                    }
                }
            }
        }
        return edges;
    }

    private static boolean isSet(String[] rows, int x, int y) {
        return x >= 0 && x < WIDTH && y >= 0 && y < HEIGHT && rows[HEIGHT - 1 - y].charAt(x) == '#';
    }

    /** Edges chained to rings, the points between two in a line left out. */
    private static List<List<Point>> rings(Map<Point, Point> edges) {
        List<List<Point>> rings = new ArrayList<>();
        while (!edges.isEmpty()) {
            Point start = edges.keySet().stream().min((a, b) -> a.y() != b.y() ? Double.compare(a.y(), b.y())
                    : Double.compare(a.x(), b.x())).orElseThrow();
            List<Point> ring = new ArrayList<>();
            for (Point at = start; at != null; at = edges.remove(at)) {
                ring.add(at);
            }
            ring.remove(ring.size() - 1);
            rings.add(corners(ring));
        }
        return rings;
    }

    private static List<Point> corners(List<Point> ring) {
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            Point before = ring.get((i + ring.size() - 1) % ring.size());
            Point after = ring.get((i + 1) % ring.size());
            if (before.x() != after.x() && before.y() != after.y()) {
                corners.add(ring.get(i));
            }
        }
        return corners;
    }
}
