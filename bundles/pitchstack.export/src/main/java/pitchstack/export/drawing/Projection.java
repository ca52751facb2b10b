// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.util.List;

/** How views are arranged (ISO 5456-2), which the cut cone in the title block shows. */
public enum Projection {
    /** The view from the left stands on the right. */
    FIRST,
    /** The view from the left stands on the left. */
    THIRD;

    /** Half the height of the sign; its cone tapers to half and is twice as long as its thin end is high (from memory). */
    private static final double RADIUS = 3;
    private static final double BEYOND = 1;

    /**
     * Draws the cone and the view from its thin end, which points left.
     *
     * @param x the middle of the sign
     * @param y its middle
     */
    void draw(Pencil pencil, double x, double y) {
        double cone = x + (this == FIRST ? -RADIUS - 1 : RADIUS + 1);
        double circles = x + (this == FIRST ? RADIUS + 1 : -RADIUS - 1);
        pencil.path(Pen.OUTLINE, List.of(new Point(cone - RADIUS, y - RADIUS / 2), new Point(cone + RADIUS, y - RADIUS),
                new Point(cone + RADIUS, y + RADIUS), new Point(cone - RADIUS, y + RADIUS / 2)), true);
        pencil.circle(Pen.OUTLINE, circles, y, RADIUS);
        pencil.circle(Pen.OUTLINE, circles, y, RADIUS / 2);
        pencil.line(Pen.CHAIN, x - 2 * RADIUS - 1 - BEYOND, y, x + 2 * RADIUS + 1 + BEYOND, y);
        pencil.line(Pen.CHAIN, circles, y - RADIUS - BEYOND, circles, y + RADIUS + BEYOND);
    }
}
