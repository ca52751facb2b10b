// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.stack;

/**
 * One mating pair of rows and the body it moves.
 *
 * @param name what people call it
 * @param source where its teeth come from
 * @param nominalPitch counts a tooth as the drawing gives it
 * @param pitch counts a tooth as it is today: fitted, and at today's temperature
 * @param rows the two rows
 * @param cost what a step costs
 * @param errors measured errors of single indices, beyond what the pitch says
 */
public record StageSpec(String name, Source source, long nominalPitch, long pitch, RowPair rows, EffortCost cost,
        IndexErrors errors) {
    /** A stage every index of which stands where its pitch puts it. */
    public StageSpec(String name, Source source, long nominalPitch, long pitch, RowPair rows, EffortCost cost) {
        this(name, source, nominalPitch, pitch, rows, cost, IndexErrors.NONE);
    }

    /**
     * How sentences name the stage: its name in quotes or, where it has none, its number.
     *
     * @param place its place in the axis, counted from the lowest, 0
     */
    public String title(int place) {
        return name.isBlank() ? String.valueOf(place + 1) : "“" + name + "”";
    }

    /** The same stage with other rows. */
    public StageSpec withRows(RowPair changed) {
        return new StageSpec(name, source, nominalPitch, pitch, changed, cost, errors);
    }

    /** The same stage with other errors of single indices. */
    public StageSpec withErrors(IndexErrors changed) {
        return new StageSpec(name, source, nominalPitch, pitch, rows, cost, changed);
    }

    /**
     * How far an index moves the body from where it stands at index 0 without an error, in counts.
     *
     * @throws ArithmeticException if it does not fit a {@code long}
     */
    public long offset(int index) {
        return Math.addExact(Math.multiplyExact(pitch, (long) index), errors.at(index));
    }
}
