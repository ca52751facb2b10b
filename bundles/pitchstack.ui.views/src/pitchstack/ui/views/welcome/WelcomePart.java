// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.welcome;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IMemento;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.IWorkbenchPartReference;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.intro.IIntroSite;
import org.eclipse.ui.part.IntroPart;
import pitchstack.ui.views.Commands;

/** The welcome page, over the whole window. It makes room as soon as anything else comes to the front. */
public final class WelcomePart extends IntroPart {
    private final IPartListener2 others = new IPartListener2() {
        @Override
        public void partActivated(IWorkbenchPartReference part) {
            IWorkbenchPart activated = part.getPart(false);
            if (activated != null && Adapters.adapt(activated, WelcomePart.class) != WelcomePart.this) {
                close();
            }
        }
    };
    private WelcomePage page;

    @Override
    public void init(IIntroSite site, IMemento memento) throws PartInitException {
        super.init(site, memento);
        site.getPage().addPartListener(others);
    }

    @Override
    public void createPartControl(Composite parent) {
        page = new WelcomePage(parent, new Commands(getIntroSite().getWorkbenchWindow()));
    }

    @Override
    public void dispose() {
        IWorkbenchPage where = getIntroSite().getPage();
        if (where != null) {
            where.removePartListener(others);
        }
        super.dispose();
    }

    @Override
    public void setFocus() {
        page.setFocus();
    }

    /** The page looks the same beside the other views. */
    @Override
    public void standbyStateChanged(boolean standby) {
        // nothing to adapt
    }

    /**
     * Closes the page once the other part is active, and then gives that part the focus: while it was still covered it
     * could not take it.
     */
    private void close() {
        IWorkbenchPage where = getIntroSite().getPage();
        IWorkbench workbench = where.getWorkbenchWindow().getWorkbench();
        Display display = workbench.getDisplay();
        display.asyncExec(() -> {
            if (!workbench.isClosing() && workbench.getIntroManager().closeIntro(this)) {
                display.asyncExec(() -> focusActivePart(where));
            }
        });
    }

    private static void focusActivePart(IWorkbenchPage where) {
        IWorkbenchPart part = where.getActivePart();
        if (part != null) {
            part.setFocus();
        }
    }
}
