// SPDX-License-Identifier: EPL-2.0
package pitchstack.app;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;
import org.eclipse.ui.model.ContributionComparator;
import org.eclipse.ui.model.IComparableContribution;
import org.eclipse.ui.model.IContributionService;
import pitchstack.ui.views.recovery.Recovery;

/**
 * Names the perspective, keeps the layout between starts, and opens the files of the command line, or the welcome page
 * where no file is open.
 */
final class PitchstackWorkbenchAdvisor extends WorkbenchAdvisor {

    private final List<Path> files;

    PitchstackWorkbenchAdvisor(List<Path> files) {
        this.files = List.copyOf(files);
    }

    @Override
    public void initialize(IWorkbenchConfigurer configurer) {
        super.initialize(configurer);
        configurer.setSaveAndRestore(true);
    }

    @Override
    public String getInitialWindowPerspectiveId() {
        return StackPerspective.ID;
    }

    @Override
    public WorkbenchWindowAdvisor createWorkbenchWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
        return new PitchstackWindowAdvisor(configurer);
    }

    /** What is chosen stands before what is only looked up; others follow by name. */
    @Override
    public ContributionComparator getComparatorFor(String contributionType) {
        return IContributionService.TYPE_PREFERENCE.equals(contributionType) ? new OwnOrder()
                : super.getComparatorFor(contributionType);
    }

    @Override
    public void preStartup() {
        OwnPages.keep(PlatformUI.getWorkbench().getPreferenceManager());
    }

    @Override
    public void postStartup() {
        IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
        FileOpening.open(window, files);
        boolean recovers = Recovery.begin(window);
        IWorkbenchPage page = window.getActivePage();
        if (recovers) {
            // What is recovered comes to the front; the welcome page would only cover it.
            return;
        }
        if (page.getEditorReferences().length == 0) {
            PlatformUI.getWorkbench().getIntroManager().showIntro(window, false);
        } else {
            // Views ask the editor for what they show, some of them only when it becomes active.
            page.activate(page.getActiveEditor());
        }
    }

    private static final class OwnOrder extends ContributionComparator {
        @Override
        public int category(IComparableContribution contribution) {
            return "Shop".equals(contribution.getLabel()) ? 0 : 1;
        }
    }
}
