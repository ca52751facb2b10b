// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.export;

import java.nio.file.Path;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.wizard.Wizard;
import pitchstack.model.file.SafeWrite;
import pitchstack.model.file.StackFileException;

/** Asks how something is to leave the program, shows it, and writes it into a file. */
public final class ExportWizard extends Wizard {
    private final ExportPage page;
    private Path written;

    /**
     * @param title of the window
     * @param page with all choices
     */
    public ExportWizard(String title, ExportPage page) {
        this.page = page;
        setWindowTitle(title);
    }

    /** What was written, once it is. */
    Path written() {
        return written;
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
        written = page.file();
        page.keep();
        return true;
    }
}
