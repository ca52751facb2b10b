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
 */
public record StageSpec(String name, Source source, long nominalPitch, long pitch, RowPair rows, EffortCost cost) {
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
        return new StageSpec(name, source, nominalPitch, pitch, changed, cost);
    }
}
