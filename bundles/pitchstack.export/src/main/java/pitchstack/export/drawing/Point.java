// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

/**
 * A place on the sheet.
 *
 * @param x mm to the right
 * @param y mm up
 */
public record Point(double x, double y) {
    /** The place so much to the right and up. */
    public Point moved(double right, double up) {
        return new Point(x + right, y + up);
    }
}
