// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.tour;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Help &gt; First Tour. */
public final class ShowTour extends AbstractHandler {
    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        IWorkbenchPage page = HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage();
        try {
            return page == null ? null : page.showView(TourView.ID);
        } catch (PartInitException e) {
            throw new ExecutionException("the first tour cannot be shown", e);
        }
    }
}
