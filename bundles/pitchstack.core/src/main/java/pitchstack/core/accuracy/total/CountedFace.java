// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.total;

import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.ToothSpan;

/**
 * Which face counts. With the rider teeth from i₀ to i₁ engaged, x = p_base·n + (p_base − p_rider)·ī, ī their mean: a move
 * counts the pitch of the face slid along, and the rider's own pitch only as far as the engaged teeth change, at the ends.
 *
 * @param rows the two rows
 */
public record CountedFace(RowPair rows) {
    /** How far ī stands at an index from where it stands at 0; 0 where the rows do not meet at either. */
    public double meanShift(int index) {
        ToothSpan now = rows.engagedRider(index);
        ToothSpan home = rows.engagedRider(0);
        return now.isEmpty() || home.isEmpty() ? 0 : (now.first() + now.last() - home.first() - home.last()) / 2.0;
    }

    /** How many pitches of the base row an index counts, from index 0. */
    public double basePitches(int index) {
        return index + meanShift(index);
    }

    /** How many pitches of the rider row an index counts. */
    public double riderPitches(int index) {
        return -meanShift(index);
    }

    /** How far an index stands from index 0, with the true pitches of both faces. */
    public double shiftM(int index, double basePitchM, double riderPitchM) {
        return basePitches(index) * basePitchM + riderPitches(index) * riderPitchM;
    }
}
