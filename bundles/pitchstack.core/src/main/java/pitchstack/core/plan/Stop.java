// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

/**
 * A target in a list of targets.
 *
 * @param name what people call it; may be empty
 * @param target the wanted position, a count of the axis's scale
 * @param tolerance the largest error that counts as reached, itself included; at least 0
 */
public record Stop(String name, long target, long tolerance) {
    /** Refuses a negative tolerance. */
    public Stop {
        if (tolerance < 0) {
            throw new IllegalArgumentException("A tolerance must be at least 0, not " + tolerance);
        }
    }

    /** The name in quotation marks, or where it has none its number in the list, which is counted from 0 here. */
    String title(int number) {
        return name.isBlank() ? "Stop " + (number + 1) : "“" + name + "”";
    }
}
