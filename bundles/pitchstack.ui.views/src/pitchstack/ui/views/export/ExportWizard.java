// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.export;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.wizard.Wizard;
import pitchstack.model.file.SafeWrite;
import pitchstack.model.file.StackFileException;

/** Asks how something is to leave the program, shows it, and writes it into a file. */
public final class ExportWizard extends Wizard {
    private final ExportPage page;

    /**
     * @param title of the window
     * @param page with all choices
     */
    public ExportWizard(String title, ExportPage page) {
        this.page = page;
        setWindowTitle(title);
    }

    @Override
    public void addPages() {
        addPage(page);
    }

    @Override
    public boolean performFinish() {
        try {
            new SafeWrite(page.file()).write(page.bytes());
        } catch (StackFileException e) {
            MessageDialog.openError(getShell(), "The file was not written", e.getMessage());
            return false;
        }
        page.keep();
        return true;
    }
}
