// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.files;

import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.core.runtime.PlatformObject;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IMemento;
import org.eclipse.ui.IPersistableElement;

/** A document that is kept in a file. Two inputs are equal if they mean the same file, by whatever name. */
public final class FileInput extends PlatformObject implements IEditorInput, IPersistableElement {
    private final Path file;

    /** @param file the real path of the file, see {@link DiskFile#real} */
    public FileInput(Path file) {
        this.file = file;
    }

    /** The file. */
    public Path file() {
        return file;
    }

    @Override
    public boolean exists() {
        return Files.exists(file);
    }

    @Override
    public ImageDescriptor getImageDescriptor() {
        return null;
    }

    @Override
    public String getName() {
        return file.getFileName().toString();
    }

    @Override
    public String getToolTipText() {
        return file.toString();
    }

    @Override
    public IPersistableElement getPersistable() {
        return this;
    }

    @Override
    public String getFactoryId() {
        return FileInputFactory.ID;
    }

    @Override
    public void saveState(IMemento memento) {
        memento.putString(FileInputFactory.PATH, file.toString());
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof FileInput other && file.equals(other.file);
    }

    @Override
    public int hashCode() {
        return file.hashCode();
    }
}
