// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.guide;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Help &gt; User Guide. */
public final class ShowGuide extends AbstractHandler {
    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        IWorkbenchPage page = HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage();
        try {
            return page == null ? null : page.showView(GuideView.ID);
        } catch (PartInitException e) {
            throw new ExecutionException("the user guide cannot be shown", e);
        }
    }
}
