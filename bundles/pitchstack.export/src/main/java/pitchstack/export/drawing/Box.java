// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

/**
 * An upright rectangle on the sheet.
 *
 * @param left mm
 * @param bottom mm
 * @param right mm, at least {@code left}
 * @param top mm, at least {@code bottom}
 */
public record Box(double left, double bottom, double right, double top) {
    /** A box from its lower left corner. */
    public static Box at(double left, double bottom, double width, double height) {
        return new Box(left, bottom, left + width, bottom + height);
    }

    /** From left to right, mm. */
    public double width() {
        return right - left;
    }

    /** From bottom to top, mm. */
    public double height() {
        return top - bottom;
    }

    /** The smallest box that holds both. */
    public Box union(Box other) {
        return new Box(Math.min(left, other.left), Math.min(bottom, other.bottom), Math.max(right, other.right),
                Math.max(top, other.top));
    }

    /** The same box so much to the right and up. */
    public Box moved(double right, double up) {
        return new Box(left + right, bottom + up, this.right + right, top + up);
    }

    /** The box with a margin inside all round; below 0 the margin is outside. */
    public Box inset(double margin) {
        return new Box(left + margin, bottom + margin, right - margin, top - margin);
    }

    /** Whether the boxes share more than an edge. */
    public boolean overlaps(Box other) {
        return left < other.right && other.left < right && bottom < other.top && other.bottom < top;
    }

    /** Whether the other box lies in this one, edges included. */
    public boolean holds(Box other) {
        return left <= other.left && bottom <= other.bottom && other.right <= right && other.top <= top;
    }
}
