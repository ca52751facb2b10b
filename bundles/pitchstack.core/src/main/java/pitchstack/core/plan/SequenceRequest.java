// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.List;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.Setting;

/**
 * A list of stops to plan.
 *
 * @param stops the stops, in the given order
 * @param from where the stages stand now, or home
 * @param last which way each stage moved last
 * @param worn when a setting over worn teeth may be offered
 * @param order how the list is planned
 * @param memoryBytes how much memory the plan may take, roughly; above 0
 */
public record SequenceRequest(List<Stop> stops, Setting from, Directions last, WornPolicy worn, StopOrder order,
        long memoryBytes) {
    /** Half a gigabyte. */
    public static final long DEFAULT_MEMORY = 512L << 20;

    /** Copies the list; refuses a budget of nothing, and directions of another number of stages. */
    public SequenceRequest {
        stops = List.copyOf(stops);
        if (memoryBytes <= 0 || from.size() != last.size()) {
            throw new IllegalArgumentException("Memory " + memoryBytes + ", " + from.size() + " indices, " + last.size()
                    + " directions");
        }
    }

    /** A request with the usual memory, and without knowledge of which way the stages moved last. */
    public SequenceRequest(List<Stop> stops, Setting from, WornPolicy worn, StopOrder order) {
        this(stops, from, Directions.unknown(from.size()), worn, order, DEFAULT_MEMORY);
    }

    /** The same stops planned in another way. */
    public SequenceRequest in(StopOrder other) {
        return new SequenceRequest(stops, from, last, worn, other, memoryBytes);
    }
}
