// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit.start;

import pitchstack.model.AxisKind;
import pitchstack.model.DisplayUnit;

/**
 * What is known of a positioner before it is laid out, as typed.
 *
 * @param kind along a line or around a centre
 * @param unit the unit of the file, meant where a length names none
 * @param travel from the lowest to the highest position; a whole turn, 360°, has no ends
 * @param step the widest spacing of neighbouring positions that is wanted
 * @param rack the pitch of the rack at hand, or of the ring; blank if there is none
 * @param lineWidth the width of one line of the printer
 */
public record StackWish(AxisKind kind, DisplayUnit unit, String travel, String step, String rack, String lineWidth) {
    /** What was typed where. */
    public enum Field {
        /** The travel. */
        TRAVEL,
        /** The finest step. */
        STEP,
        /** The rack at hand. */
        RACK,
        /** The printed line width. */
        LINE_WIDTH
    }

    /** Whether the positioner turns. */
    public boolean isRotary() {
        return kind == AxisKind.ROTARY;
    }
}
