// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.card;

import java.time.LocalDate;
import java.util.List;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.plan.Stop;
import pitchstack.core.plan.StopOrder;
import pitchstack.core.plan.WornPolicy;
import pitchstack.model.Positioner;

/**
 * What card to make.
 *
 * @param positioner the device
 * @param analysis the axis of it that is set; one without errors
 * @param stops the targets, at least one
 * @param order in which they are set
 * @param worn when a setting over worn teeth may be used
 * @param memoryBytes how much memory the planning may take
 * @param date of issue, and the only date in the file
 */
public record CardRequest(Positioner positioner, AxisAnalysis analysis, List<Stop> stops, StopOrder order, WornPolicy worn,
        long memoryBytes, LocalDate date) {
    /** Copies the list. */
    public CardRequest {
        stops = List.copyOf(stops);
        if (stops.isEmpty()) {
            throw new IllegalArgumentException("A card without targets");
        }
    }
}
