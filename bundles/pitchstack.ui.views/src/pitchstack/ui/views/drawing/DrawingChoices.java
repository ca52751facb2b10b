// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.drawing;

import java.util.Map;
import java.util.Optional;
import pitchstack.export.drawing.DrawingFormat;
import pitchstack.export.drawing.Projection;
import pitchstack.export.drawing.SheetSize;
import pitchstack.export.drawing.StandardScale;
import pitchstack.ui.views.export.KeptChoices;

/**
 * How a person wants drawings, kept with the settings of the window.
 *
 * @param format of the file
 * @param sheet or nothing for the smallest that fits
 * @param scale or nothing for the largest that fits
 * @param projection or nothing for the one that goes with the unit
 */
record DrawingChoices(DrawingFormat format, Optional<SheetSize> sheet, Optional<StandardScale> scale,
        Optional<Projection> projection) {
    private static final KeptChoices KEPT = new KeptChoices("pitchstack.ui.views.drawing");
    private static final String FORMAT = "format";
    private static final String SHEET = "sheet";
    private static final String SCALE = "scale";
    private static final String PROJECTION = "projection";

    /** As they were last; a choice that is not known any more counts as not made. */
    static DrawingChoices last() {
        return new DrawingChoices(KEPT.one(DrawingFormat.values(), FORMAT).orElse(DrawingFormat.PDF),
                KEPT.one(SheetSize.values(), SHEET), StandardScale.parse(KEPT.text(SCALE)),
                KEPT.one(Projection.values(), PROJECTION));
    }

    /** Keeps them for the next time. */
    void keep() {
        KEPT.keep(Map.of(FORMAT, format.name(), SHEET, sheet.map(Enum::name).orElse(""),
                SCALE, scale.map(StandardScale::toString).orElse(""), PROJECTION, projection.map(Enum::name).orElse("")));
    }
}
