// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

/**
 * Neighbouring positions that are reached alike, both ends included, in counts of the axis's scale.
 *
 * @param low the lowest
 * @param high the highest, at least {@code low}
 * @param reached how
 */
public record Stretch(long low, long high, Reached reached) {
    /** How many counts it holds, both ends included. */
    public long size() {
        return high - low + 1;
    }

    /** Whether a position lies in it. */
    public boolean contains(long position) {
        return low <= position && position <= high;
    }
}
