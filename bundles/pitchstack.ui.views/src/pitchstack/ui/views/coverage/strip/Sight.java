// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.coverage.strip;

/**
 * The part of a travel that is in sight. All numbers are counts of the axis's scale, as doubles because they are only
 * looked at.
 *
 * @param first the lowest position of the travel
 * @param last the highest, at least {@code first}
 * @param least how much is in sight at the closest zoom, above 0
 * @param from the lowest position in sight
 * @param to the highest, at least {@code least} above
 */
public record Sight(double first, double last, double least, double from, double to) {
    /** The whole travel, or what the closest zoom shows around a shorter one. */
    public static Sight all(double first, double last, double least) {
        double more = Math.max(0, least - (last - first)) / 2;
        return new Sight(first - more, last + more, least, first - more, last + more);
    }

    /** The whole travel again. */
    public Sight all() {
        return new Sight(first, last, least, first, last);
    }

    /** How much is in sight. */
    public double size() {
        return to - from;
    }

    /** Whether all of the travel is in sight. */
    public boolean isAll() {
        return from <= first && to >= last;
    }

    /**
     * Closer or farther, with one position staying where it is.
     *
     * @param factor above 1 closer, below 1 farther
     * @param fixed the position that stays, as far as the ends of the travel allow
     */
    public Sight zoom(double factor, double fixed) {
        double size = Math.max(least, Math.min(last - first, size() / factor));
        return at(fixed - (fixed - from) * size / size(), size);
    }

    /** The same much farther up, or down for a negative number of counts; no farther than the travel goes. */
    public Sight pan(double counts) {
        return at(from + counts, size());
    }

    /** The same travel and zoom on another travel, as far as it reaches. */
    public Sight on(Sight other) {
        double size = Math.max(other.least, Math.min(other.last - other.first, size()));
        return isAll() ? other.all() : other.at(from, size);
    }

    private Sight at(double wanted, double size) {
        double start = Math.max(first, Math.min(last - size, wanted));
        return new Sight(first, last, least, start, start + size);
    }

    /** The position under a place on the screen, from 0 at the left edge to {@code width} at the right. */
    public double position(double x, int width) {
        return from + size() * x / width;
    }

    /** Where a position stands on the screen. */
    public double x(double position, int width) {
        return (position - from) / size() * width;
    }
}
