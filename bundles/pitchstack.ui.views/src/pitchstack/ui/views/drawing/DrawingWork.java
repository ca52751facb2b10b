// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.drawing;

import java.util.List;
import java.util.Optional;
import pitchstack.core.check.Finding;
import pitchstack.core.check.Severity;
import pitchstack.export.drawing.Drawing;
import pitchstack.export.drawing.DrawingAnswer;
import pitchstack.export.drawing.DrawingAnswer.Drawn;
import pitchstack.export.drawing.DrawingAnswer.Refused;
import pitchstack.export.drawing.DrawingFormat;
import pitchstack.export.drawing.DrawingPreview;
import pitchstack.export.drawing.DrawingRequest;
import pitchstack.export.drawing.FixtureDrawing;
import pitchstack.export.drawing.LiberationSans;
import pitchstack.ui.views.export.ExportWork;
import pitchstack.ui.views.export.ExportWork.None;
import pitchstack.ui.views.export.ExportWork.Ready;

/** Draws, away from the interface thread. */
final class DrawingWork {
    private DrawingWork() {
    }

    /** The drawing as a file, or why there is none. */
    static ExportWork of(DrawingRequest request, DrawingFormat format) {
        Optional<Finding> error = request.axes().stream().flatMap(axis -> axis.findings().stream())
                .filter(finding -> finding.severity() == Severity.ERROR).findFirst();
        if (error.isPresent()) {
            return new None("Nothing can be drawn before this is mended: " + error.get().sentence());
        }
        LiberationSans letters = new LiberationSans();
        DrawingAnswer answer = FixtureDrawing.of(request, letters);
        if (answer instanceof Refused refused) {
            return new None(refused.sentence());
        }
        Drawing drawing = ((Drawn) answer).drawing();
        return new Ready(format.bytes(drawing, letters), DrawingPreview.of(drawing, letters, ExportWork.PREVIEW_PX),
                "one sheet " + drawing.sheet().name(), "One sheet " + drawing.sheet().name(), List.of());
    }
}
