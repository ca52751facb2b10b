// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.model.DisplayUnit;
import pitchstack.model.Positioner;
import pitchstack.model.TitleBlock;

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

    /**
     * What is drawn where nothing else is asked for: the smallest sheet, the largest scale, the projection that goes with
     * the unit, and the date of issue that the file gives.
     *
     * @param today the date where the file gives none that can be read
     */
    public static DrawingRequest usual(Positioner positioner, List<AxisAnalysis> axes, LocalDate today) {
        Projection projection = positioner.getUnit() == DisplayUnit.INCH ? Projection.THIRD : Projection.FIRST;
        return new DrawingRequest(positioner, axes, Optional.empty(), Optional.empty(), projection,
                issued(positioner).orElse(today));
    }

    /** The date of issue that the title block gives, if it can be read as 2026-01-15. */
    public static Optional<LocalDate> issued(Positioner positioner) {
        TitleBlock block = positioner.getTitleBlock();
        if (block == null || block.getIssued() == null) {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalDate.parse(block.getIssued().strip()));
        } catch (DateTimeException notADate) {
            // People may write whatever they like there; the drawing shows it as it is.
            return Optional.empty();
        }
    }
}
