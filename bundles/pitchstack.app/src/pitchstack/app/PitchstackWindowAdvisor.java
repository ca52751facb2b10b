// SPDX-License-Identifier: EPL-2.0
package pitchstack.app;

import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.IViewReference;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/** The window's title, first size and bars. */
final class PitchstackWindowAdvisor extends WorkbenchWindowAdvisor {

    /** Wide enough for a rack beside the target view, and it still fits a 1366 x 768 screen once maximised. */
    private static final Point FIRST_SIZE = new Point(1280, 800);

    PitchstackWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
        super(configurer);
    }

    @Override
    public void preWindowOpen() {
        IWorkbenchWindowConfigurer window = getWindowConfigurer();
        window.setTitle(PitchstackApplication.NAME);
        window.setInitialSize(FIRST_SIZE);
        window.setShowCoolBar(true);
        window.setShowStatusLine(true);
        window.setShowPerspectiveBar(false);
        window.setShowProgressIndicator(true);
    }

    @Override
    public void postWindowOpen() {
        FileDrop.into(getWindowConfigurer().getWindow());
        // Its tab says how much was found, also while it is behind others.
        IViewReference findings = getWindowConfigurer().getWindow().getActivePage().findViewReference(StackPerspective.FINDINGS_VIEW);
        if (findings != null) {
            findings.getView(true);
        }
    }

    /** The welcome page is shown once all files are open, and only if there are none. */
    @Override
    public void openIntro() {
        // see PitchstackWorkbenchAdvisor
    }

    @Override
    public ActionBarAdvisor createActionBarAdvisor(IActionBarConfigurer configurer) {
        return new PitchstackActionBars(configurer);
    }
}
