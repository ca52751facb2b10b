// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.OptionalInt;

/**
 * Where in an axis a finding belongs. Stages count from the lowest, 0.
 *
 * @param stage the stage, or empty for the axis itself
 * @param part the part of the stage
 * @param worn the marked range of the row, counted from 0, or empty for the row itself
 */
public record Place(OptionalInt stage, Part part, OptionalInt worn) {
    /** The parts of a stage. */
    public enum Part {
        /** The stage, or the axis. */
        WHOLE,
        /** The base row. */
        BASE_ROW,
        /** The rider row. */
        RIDER_ROW
    }

    /** The axis itself. */
    public static final Place AXIS = new Place(OptionalInt.empty(), Part.WHOLE, OptionalInt.empty());

    /** A stage. */
    public static Place stage(int stage) {
        return new Place(OptionalInt.of(stage), Part.WHOLE, OptionalInt.empty());
    }

    /** A row of a stage. */
    public static Place row(int stage, Part row) {
        return new Place(OptionalInt.of(stage), row, OptionalInt.empty());
    }

    /** A marked range of a row. */
    public static Place worn(int stage, Part row, int range) {
        return new Place(OptionalInt.of(stage), row, OptionalInt.of(range));
    }
}
