// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.total;

import pitchstack.core.accuracy.rack.RackTolerance;

/** What is known of the length of a row. */
public sealed interface RowLength {
    /**
     * Its scale is off by the same part all along, as of a print.
     *
     * @param uncertainty relative standard uncertainty of the pitch, at least 0
     * @param setUp the set-up in which it was made; rows of one set-up, printed together in the same direction, share most of
     *     their scale error. Blank for one made by itself.
     */
    record Scaled(double uncertainty, String setUp) implements RowLength {
        /** Checks the number. */
        public Scaled {
            if (!(uncertainty >= 0) || Double.isInfinite(uncertainty)) {
                throw new IllegalArgumentException("The uncertainty of a scale is at least 0, not " + uncertainty);
            }
        }
    }

    /**
     * It is bought, to a grade.
     *
     * @param tolerance of the grade at its length
     */
    record Graded(RackTolerance tolerance) implements RowLength { }
}
