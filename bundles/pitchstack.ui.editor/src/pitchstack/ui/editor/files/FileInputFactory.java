// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.files;

import java.nio.file.Path;
import org.eclipse.core.runtime.IAdaptable;
import org.eclipse.ui.IElementFactory;
import org.eclipse.ui.IMemento;

/** Makes the input of a file again that was open when the program ended. */
public final class FileInputFactory implements IElementFactory {
    /** The id under which it is registered. */
    static final String ID = "pitchstack.ui.editor.fileInput";
    /** Where the path is kept. */
    static final String PATH = "path";

    @Override
    public IAdaptable createElement(IMemento memento) {
        String path = memento.getString(PATH);
        return path == null ? null : new FileInput(Path.of(path));
    }
}
