// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.drawing;

import pitchstack.edit.Session;
import pitchstack.ui.views.export.ExportHandler;
import pitchstack.ui.views.export.ExportWizard;

/** File &gt; Export Drawing: shows the sheet and writes it. */
public final class ExportDrawing extends ExportHandler {
    @Override
    protected ExportWizard wizard(Session session) {
        return new ExportWizard("Export Drawing", new DrawingPage(session));
    }
}
