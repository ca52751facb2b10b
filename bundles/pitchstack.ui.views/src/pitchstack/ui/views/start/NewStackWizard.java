// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.start;

import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.wizard.Wizard;
import pitchstack.edit.start.ShopDefaults;
import pitchstack.edit.start.StartingStack;
import pitchstack.model.file.StackFile;
import pitchstack.model.file.StackFileException;

/** Asks for a travel, a step and what is at hand, shows what comes of it, and writes it into a file. */
final class NewStackWizard extends Wizard {
    private final WishPage wishes;
    private final ResultPage result;
    private Optional<Path> written = Optional.empty();

    NewStackWizard(ShopDefaults shop) {
        wishes = new WishPage(shop);
        result = new ResultPage(wishes, shop);
        setWindowTitle("Design a New Stack");
        setNeedsProgressMonitor(true);
    }

    @Override
    public void addPages() {
        addPage(wishes);
        addPage(result);
    }

    /** The file, once it is written. */
    Optional<Path> written() {
        return written;
    }

    @Override
    public boolean canFinish() {
        return getContainer().getCurrentPage() == result && super.canFinish();
    }

    @Override
    public boolean performFinish() {
        StartingStack stack = result.stack().orElseThrow();
        Path file = result.file();
        String name = file.getFileName().toString();
        stack.positioner().setTitle(name.substring(0, name.length() - StackFile.EXTENSION.length() - 1));
        try {
            StackFile.save(stack.positioner(), file);
        } catch (StackFileException e) {
            MessageDialog.openError(getShell(), "The file was not written", e.getMessage());
            return false;
        }
        result.keepFolder();
        written = Optional.of(file);
        return true;
    }
}
