// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.stack;

import java.util.List;

/**
 * The teeth on one face.
 *
 * @param teeth how many teeth it has
 * @param worn the marked ranges, in any order; they may overlap
 */
public record RowSpec(int teeth, List<WornRange> worn) {
    /** Copies the list. */
    public RowSpec {
        worn = List.copyOf(worn);
    }

    /** All teeth of the row. */
    public ToothSpan span() {
        return new ToothSpan(0, teeth - 1);
    }

    /** The worst mark on the given teeth; marks outside the row do not count. */
    public Wear wearOn(ToothSpan some) {
        Wear worst = Wear.CLEAN;
        for (WornRange range : worn) {
            if (range.teeth().intersect(span()).meets(some)) {
                worst = worst.worse(range.wear());
            }
        }
        return worst;
    }
}
