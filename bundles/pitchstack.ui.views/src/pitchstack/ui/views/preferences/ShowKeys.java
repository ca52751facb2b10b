// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.preferences;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.dialogs.PreferencesUtil;
import org.eclipse.ui.handlers.HandlerUtil;

/** Help &gt; Keys. */
public final class ShowKeys extends AbstractHandler {
    @Override
    public Object execute(ExecutionEvent event) {
        PreferencesUtil.createPreferenceDialogOn(HandlerUtil.getActiveShell(event), KeysPage.ID, null, null).open();
        return null;
    }
}
