// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceImpl;
import pitchstack.model.Positioner;

/** Documents in memory. */
final class Documents {
    private Documents() {
    }

    /** A session on a new positioner, in no file. */
    static Session session() {
        return session(NewStack.positioner());
    }

    static Session session(Positioner positioner) {
        Resource document = document(positioner);
        return new Session(document, fault -> {
            throw fault;
        });
    }

    static Resource document(Positioner positioner) {
        Resource document = new XMIResourceImpl(URI.createURI("memory:test.pitchstack"));
        document.getContents().add(positioner);
        return document;
    }
}
