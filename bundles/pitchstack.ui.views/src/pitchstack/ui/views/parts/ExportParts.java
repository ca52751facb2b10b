// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.parts;

import pitchstack.edit.Session;
import pitchstack.ui.views.export.ExportHandler;
import pitchstack.ui.views.export.ExportWizard;

/** File &gt; Export Parts: shows rows as they lie on the bed and writes them. */
public final class ExportParts extends ExportHandler {
    @Override
    protected ExportWizard wizard(Session session) {
        return new ExportWizard("Export Parts", new PartsPage(session));
    }
}
