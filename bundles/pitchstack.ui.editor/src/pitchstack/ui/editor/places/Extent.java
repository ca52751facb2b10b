// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.places;

/**
 * A stretch along an axis or along the drawing.
 *
 * @param from the left end
 * @param to the right end, at least {@code from}
 */
public record Extent(double from, double to) {
    /** Its length, at least 0. */
    public double length() {
        return to - from;
    }

    /** The middle. */
    public double middle() {
        return (from + to) / 2;
    }

    /** The smallest stretch that holds both. */
    public Extent union(Extent other) {
        return new Extent(Math.min(from, other.from), Math.max(to, other.to));
    }

    /** What both share; where they do not meet, an empty stretch at the end of this one that is nearer. */
    public Extent intersect(Extent other) {
        double left = Math.min(Math.max(from, other.from), to);
        return new Extent(left, Math.max(left, Math.min(to, other.to)));
    }

    /** The same stretch moved to the right. */
    public Extent shift(double by) {
        return new Extent(from + by, to + by);
    }

    /** Whether there is nothing in it. */
    public boolean isEmpty() {
        return to <= from;
    }
}
