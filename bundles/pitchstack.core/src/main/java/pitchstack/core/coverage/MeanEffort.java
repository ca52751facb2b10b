// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.Optional;
import java.util.OptionalLong;

/**
 * The mean of the least efforts over the positions of a grid that are reached both times.
 *
 * @param step from each position of the grid to the next, in counts
 * @param cells how many positions are reached both times, above 0
 * @param nowMs the mean as the teeth are, in milliseconds
 * @param supposedMs the mean with the marks, in milliseconds
 */
public record MeanEffort(long step, int cells, double nowMs, double supposedMs) {
    /** Compares two maps of the same grid; empty where no position is reached both times. */
    static Optional<MeanEffort> of(EffortMap now, EffortMap supposed) {
        int cells = 0;
        double nowMs = 0;
        double supposedMs = 0;
        for (int cell = 0; cell < Math.min(now.cells(), supposed.cells()); cell++) {
            OptionalLong one = now.effortMs(cell);
            OptionalLong two = supposed.effortMs(cell);
            if (one.isPresent() && two.isPresent()) {
                cells++;
                nowMs += one.getAsLong();
                supposedMs += two.getAsLong();
            }
        }
        return cells == 0 ? Optional.empty()
                : Optional.of(new MeanEffort(now.step(), cells, nowMs / cells, supposedMs / cells));
    }
}
