// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.List;
import java.util.Optional;

/**
 * What supposed marks would cost.
 *
 * @param now what is reached as the teeth are
 * @param supposed what would be reached
 * @param change where the two differ
 * @param stops every stop of the list, in its order
 * @param mean the mean effort over the travel, both times; empty where no step is known to measure it by, where it
 *     would take too much, and where no position is reached both times
 */
public record Supposition(Coverage now, Coverage supposed, CoverageChange change, List<StopChange> stops,
        Optional<MeanEffort> mean) {
    /** Copies the list. */
    public Supposition {
        stops = List.copyOf(stops);
    }

    /** What the stops that are reached both times would cost more altogether, in milliseconds. */
    public long extraMs() {
        return stops.stream().flatMapToLong(stop -> stop.extraMs().stream()).sum();
    }
}
