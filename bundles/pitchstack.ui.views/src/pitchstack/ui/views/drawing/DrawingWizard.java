// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.drawing;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.wizard.Wizard;
import pitchstack.edit.Session;
import pitchstack.model.file.SafeWrite;
import pitchstack.model.file.StackFileException;

/** Asks how a drawing is to look, shows it, and writes it into a file. */
final class DrawingWizard extends Wizard {
    private final DrawingPage page;

    DrawingWizard(Session session) {
        page = new DrawingPage(session);
        setWindowTitle("Export Drawing");
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
        page.choices().keep();
        return true;
    }
}
