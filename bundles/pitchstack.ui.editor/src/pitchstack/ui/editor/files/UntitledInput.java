// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.files;

import org.eclipse.core.runtime.PlatformObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPersistableElement;

/** A document that is in no file yet. Every one is another. */
public final class UntitledInput extends PlatformObject implements IEditorInput {
    private final String name;
    private final Resource document;

    /**
     * @param name what its tab shows, and the name offered for its file
     * @param document holds the positioner as its one root
     */
    public UntitledInput(String name, Resource document) {
        this.name = name;
        this.document = document;
    }

    /** The document. */
    public Resource document() {
        return document;
    }

    @Override
    public boolean exists() {
        return false;
    }

    @Override
    public ImageDescriptor getImageDescriptor() {
        return null;
    }

    @Override
    public String getName() {
        return name;
    }

    @Override
    public String getToolTipText() {
        return name + ", not saved in a file yet";
    }

    @Override
    public IPersistableElement getPersistable() {
        return null;
    }
}
