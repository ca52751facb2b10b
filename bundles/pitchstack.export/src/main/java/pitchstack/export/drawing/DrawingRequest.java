// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.model.Positioner;

/**
 * What is to be drawn.
 *
 * @param positioner the device
 * @param axes of it, none with errors, at least one
 * @param sheet the paper, or nothing for the smallest that everything fits on
 * @param scale of the side views, or nothing for the largest that fits
 * @param projection which sign the title block shows
 * @param date of issue where the file gives none, and of the drawing's file
 */
public record DrawingRequest(Positioner positioner, List<AxisAnalysis> axes, Optional<SheetSize> sheet,
        Optional<StandardScale> scale, Projection projection, LocalDate date) {
    /** Copies the list. */
    public DrawingRequest {
        axes = List.copyOf(axes);
        if (axes.isEmpty()) {
            throw new IllegalArgumentException("No axis to draw");
        }
    }
}
