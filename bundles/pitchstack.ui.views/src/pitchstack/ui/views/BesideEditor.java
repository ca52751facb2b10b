// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views;

import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.part.IContributedContentsView;

/** Lets the Properties view stay with what the editor has selected while another view is active. */
public final class BesideEditor {
    private BesideEditor() {
    }

    /**
     * The answer of a view that is asked for an adapter.
     *
     * @param type what is asked for
     * @param page the page of the view
     * @return {@code null} if something else is asked for
     */
    public static <T> T adapter(Class<T> type, IWorkbenchPage page) {
        return type == IContributedContentsView.class ? type.cast((IContributedContentsView) page::getActiveEditor) : null;
    }
}
