// SPDX-License-Identifier: EPL-2.0
package pitchstack.app;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/** Names the perspective, keeps the layout between starts and opens the files of the command line. */
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

    @Override
    public void postStartup() {
        FileOpening.open(PlatformUI.getWorkbench().getActiveWorkbenchWindow(), files);
    }
}
