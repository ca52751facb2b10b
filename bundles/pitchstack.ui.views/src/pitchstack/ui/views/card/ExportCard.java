// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.card;

import pitchstack.edit.Session;
import pitchstack.ui.views.export.ExportHandler;
import pitchstack.ui.views.export.ExportWizard;

/** File &gt; Export Setting Card: plans the targets, shows the card and writes it. */
public final class ExportCard extends ExportHandler {
    @Override
    protected ExportWizard wizard(Session session) {
        return new ExportWizard("Export Setting Card", new CardPage(session));
    }
}
