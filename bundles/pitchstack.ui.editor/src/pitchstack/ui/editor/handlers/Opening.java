// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.handlers;

import java.nio.file.Path;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.impl.ResourceImpl;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import pitchstack.model.file.StackFile;
import pitchstack.model.file.StackFileException;
import pitchstack.ui.editor.StackEditor;
import pitchstack.ui.editor.files.DiskFile;
import pitchstack.ui.editor.files.FileInput;
import pitchstack.ui.editor.files.RecentFiles;
import pitchstack.ui.editor.files.Shop;
import pitchstack.ui.editor.files.UntitledInput;

/** Opens documents in a window. What cannot be opened is said in a dialog. */
final class Opening {
    private final IWorkbenchWindow window;

    /** @param window where editors are opened */
    Opening(IWorkbenchWindow window) {
        this.window = window;
    }

    /** Opens a file, or brings the editor to the front that has it. */
    void file(Path path) {
        Path real = DiskFile.real(path);
        FileInput input = new FileInput(real);
        try {
            if (window.getActivePage().findEditor(input) == null) {
                // An editor that fails to open stays in the way as an empty tab, so the file is tried first.
                StackFile.load(real);
            }
            open(input);
            new RecentFiles().add(real);
        } catch (StackFileException e) {
            new RecentFiles().remove(real);
            tell("The file was not opened", e.getMessage());
        }
    }

    /** Opens what a file holds as a document of its own, which is in no file yet. */
    void copy(Path path) {
        try {
            Resource document = StackFile.load(path).resource();
            document.setURI(URI.createURI("untitled:" + path.getFileName()));
            open(new UntitledInput(path.getFileName().toString(), document));
        } catch (StackFileException e) {
            tell("The file was not opened", e.getMessage());
        }
    }

    /** Opens a new document. */
    void untitled() {
        String name = "untitled." + StackFile.EXTENSION;
        Resource document = new ResourceImpl(URI.createURI("untitled:" + name));
        document.getContents().add(Shop.get().newPositioner());
        open(new UntitledInput(name, document));
    }

    private void open(IEditorInput input) {
        try {
            IWorkbenchPage page = window.getActivePage();
            page.openEditor(input, StackEditor.ID);
        } catch (PartInitException e) {
            tell("The document was not opened", e.getMessage());
        }
    }

    private void tell(String title, String sentence) {
        MessageDialog.openError(window.getShell(), title, sentence);
    }
}
