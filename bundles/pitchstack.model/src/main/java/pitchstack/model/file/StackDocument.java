// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

import java.nio.file.Path;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.impl.ResourceImpl;
import pitchstack.model.Positioner;

/**
 * A positioner and the resource that holds it. The resource belongs to no resource set and cannot load or save by
 * itself, so that a file is read and written in one way only: by {@link StackFile}.
 *
 * @param resource holds the positioner as its one root
 * @param positioner the root
 */
public record StackDocument(Resource resource, Positioner positioner) {
    /** A document around a positioner that stands in no resource yet; the file need not exist. */
    static StackDocument of(Path file, Positioner positioner) {
        Resource resource = new ResourceImpl(URI.createFileURI(file.toAbsolutePath().toString()));
        resource.getContents().add(positioner);
        return new StackDocument(resource, positioner);
    }
}
