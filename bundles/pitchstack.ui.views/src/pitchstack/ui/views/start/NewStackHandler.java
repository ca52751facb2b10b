// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.start;

import java.util.Map;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.HandlerUtil;
import pitchstack.ui.views.Commands;
import pitchstack.ui.views.preferences.ShopSettings;

/** File &gt; Design a New Stack: asks, writes the file, and opens it. */
public final class NewStackHandler extends AbstractHandler {
    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindowChecked(event);
        NewStackWizard wizard = new NewStackWizard(ShopSettings.get());
        new WizardDialog(window.getShell(), wizard).open();
        wizard.written().ifPresent(file -> new Commands(window).run(Commands.OPEN_FILE, Map.of(Commands.PATH, file.toString())));
        return null;
    }
}
