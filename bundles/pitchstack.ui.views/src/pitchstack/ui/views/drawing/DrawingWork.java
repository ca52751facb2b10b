// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.drawing;

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
import pitchstack.export.plot.Picture;

/** What comes of a choice, worked out away from the interface thread. */
sealed interface DrawingWork {
    /** Twice as many pixels as a dialog is wide, for screens with small ones. */
    int PREVIEW_PX = 1400;

    /**
     * A file, ready to be written.
     *
     * @param sheet on which sheet the drawing is
     * @param bytes of the file
     * @param picture how it looks
     */
    record Ready(String sheet, byte[] bytes, Picture picture) implements DrawingWork { }

    /** There is none, and why. */
    record None(String sentence) implements DrawingWork { }

    /** Draws. */
    static DrawingWork of(DrawingRequest request, DrawingFormat format) {
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
        return new Ready(drawing.sheet().name(), format.bytes(drawing, letters),
                DrawingPreview.of(drawing, letters, PREVIEW_PX));
    }
}
