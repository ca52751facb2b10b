// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry.solid;

import pitchstack.core.geometry.Point;

/**
 * How a side view is laid on the bed: x' = (x − x0)·fx and y' = (y − y0)·fy, or y' = (y0 − y)·fy where it is turned over.
 *
 * @param factorX by what the drawing is multiplied along the row, so that the print comes out true
 * @param factorY the same across it
 * @param fromX the x that comes to lie on the edge of the bed
 * @param fromY the y that does
 * @param mirrored whether the teeth point down
 */
public record Placement(double factorX, double factorY, double fromX, double fromY, boolean mirrored) {
    /** Where a point of the side view comes to lie, along x. */
    public double x(Point point) {
        return (point.x() - fromX) * factorX;
    }

    /** Where a point of the side view comes to lie, along y. */
    public double y(Point point) {
        return (mirrored ? fromY - point.y() : point.y() - fromY) * factorY;
    }
}
