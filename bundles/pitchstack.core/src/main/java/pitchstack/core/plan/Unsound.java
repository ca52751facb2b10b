// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.OptionalInt;

/**
 * Why an axis cannot be planned with.
 *
 * @param cause the kind of reason
 * @param stage the stage concerned, counted from the lowest, 0; empty for the axis itself
 * @param value the number found
 * @param limit the number allowed
 * @param sentence one sentence with the numbers and the way out
 */
public record Unsound(Cause cause, OptionalInt stage, String value, String limit, String sentence) {
    /** The kinds of reason. */
    public enum Cause {
        /** There is no stage. */
        NO_STAGE,
        /** There are more than {@value Soundness#MOST_STAGES} stages. */
        TOO_MANY_STAGES,
        /** A pitch is zero or below. */
        PITCH_NOT_POSITIVE,
        /** A pitch is more than one turn. */
        PITCH_ABOVE_TURN,
        /** A measured error of an index is half a pitch or more. */
        INDEX_ERROR_TOO_LARGE,
        /** A cost is below 0. */
        COST_NEGATIVE,
        /** A row has no teeth. */
        ROW_EMPTY,
        /** A row has more than {@value Soundness#MOST_TEETH} teeth, or starts as far away. */
        ROW_TOO_LONG,
        /** More teeth must stay engaged than the rows have. */
        ROWS_NEVER_MEET,
        /** A shift limit names a stage that does not exist. */
        SHIFT_LIMIT_STAGES,
        /** A shift limit is below 0. */
        SHIFT_LIMIT_NEGATIVE,
        /** A sum of the numbers would not fit. */
        TOO_LARGE
    }
}
