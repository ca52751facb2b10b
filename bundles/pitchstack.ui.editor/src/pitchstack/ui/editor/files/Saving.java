// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.files;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Predicate;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import pitchstack.model.file.StackFile;
import pitchstack.model.file.StackFileException;

/** Saves a document, and asks what only the person can decide. */
public final class Saving {
    private static final String NOT_SAVED = "The document was not saved";
    private static final int OVERWRITE = 0;
    private static final int SAVE_AS = 1;

    private final Shell shell;
    private final Predicate<Path> openElsewhere;

    /**
     * @param shell where questions are asked
     * @param openElsewhere whether a file, by its real path, is open in another editor
     */
    public Saving(Shell shell, Predicate<Path> openElsewhere) {
        this.shell = shell;
        this.openElsewhere = openElsewhere;
    }

    /**
     * Saves a document into the file it was read from.
     *
     * @param file the file
     * @param document the document
     * @return the file it is in now, which may be another if the person wanted so; empty if it was not saved
     */
    public Optional<DiskFile> save(DiskFile file, Resource document) {
        if (!file.changedByOthers()) {
            return write(file, document);
        }
        int answer = MessageDialog.open(MessageDialog.QUESTION, shell, "The file has changed",
                file.path() + " was changed by another program after it was opened here. "
                        + "Overwrite it with what is shown here, or save this under another name?",
                SWT.NONE, "Overwrite", "Save As…", "Cancel");
        return switch (answer) {
            case OVERWRITE -> write(file, document);
            case SAVE_AS -> saveAs(file.path(), document);
            default -> Optional.empty();
        };
    }

    /**
     * Saves a document under a name that is asked for.
     *
     * @param proposed the name to begin with; a folder before it is shown first
     * @param document the document
     * @return the file it is in now; empty if it was not saved
     */
    public Optional<DiskFile> saveAs(Path proposed, Resource document) {
        FileDialog dialog = new FileDialog(shell, SWT.SAVE);
        dialog.setText("Save As");
        dialog.setOverwrite(true);
        dialog.setFilterNames(new String[] {"Positioners (*." + StackFile.EXTENSION + ")", "All files"});
        dialog.setFilterExtensions(new String[] {"*." + StackFile.EXTENSION, "*"});
        dialog.setFileName(proposed.getFileName().toString());
        if (proposed.getParent() != null) {
            dialog.setFilterPath(proposed.getParent().toString());
        }
        String chosen = dialog.open();
        if (chosen == null) {
            return Optional.empty();
        }
        Path path = withExtension(Path.of(chosen));
        return mayWrite(path, path.equals(Path.of(chosen))) ? write(DiskFile.at(path), document) : Optional.empty();
    }

    private boolean mayWrite(Path path, boolean asked) {
        if (openElsewhere.test(DiskFile.real(path))) {
            MessageDialog.openError(shell, NOT_SAVED,
                    path.getFileName() + " is open in another tab. Close that tab first, or choose another name.");
            return false;
        }
        return asked || Files.notExists(path) || MessageDialog.openQuestion(shell, "The file exists",
                path.getFileName() + " exists already. Overwrite it?");
    }

    private static Path withExtension(Path path) {
        String name = path.getFileName().toString();
        return name.indexOf('.') >= 0 ? path : path.resolveSibling(name + "." + StackFile.EXTENSION);
    }

    private Optional<DiskFile> write(DiskFile file, Resource document) {
        try {
            file.save(document);
            return Optional.of(DiskFile.at(DiskFile.real(file.path())));
        } catch (StackFileException e) {
            MessageDialog.openError(shell, NOT_SAVED, e.getMessage());
            return Optional.empty();
        }
    }
}
