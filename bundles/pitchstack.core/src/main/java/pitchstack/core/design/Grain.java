// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.design;

/** Which pitches can be written down and made. */
public interface Grain {
    /**
     * The smallest such pitch that is not below a wanted one.
     *
     * @param pitch counts a tooth, above 0
     * @return counts a tooth; on a ring rounded down to a whole count
     */
    long up(long pitch);

    /**
     * Whole multiples of a length.
     *
     * @param size counts, at least 1
     */
    static Grain of(long size) {
        return pitch -> -Math.floorDiv(-pitch, size) * size;
    }

    /**
     * Rings of a whole number of teeth.
     *
     * @param turn counts in one turn
     */
    static Grain rings(long turn) {
        return pitch -> turn / Math.max(1, turn / pitch);
    }
}
