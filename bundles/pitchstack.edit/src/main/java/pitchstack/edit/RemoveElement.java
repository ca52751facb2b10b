// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import pitchstack.model.Stage;
import pitchstack.model.Target;
import pitchstack.model.WornRange;

/**
 * Takes an element out of the document.
 *
 * @param element a stage, a target or a worn range
 */
public record RemoveElement(EObject element) implements Edit {
    /** Refuses what cannot be removed alone. */
    public RemoveElement {
        if (!canRemove(element)) {
            throw new IllegalArgumentException("Not removable: " + element);
        }
    }

    /** Whether an element can be removed: a stage, a target or a worn range that is part of a document. */
    public static boolean canRemove(EObject element) {
        return (element instanceof Stage || element instanceof Target || element instanceof WornRange)
                && element.eContainer() != null;
    }

    @Override
    public String label() {
        if (element instanceof Stage stage) {
            return "Delete stage “" + stage.getName() + "”";
        }
        return element instanceof Target target ? "Delete target “" + target.getName() + "”" : "Delete worn range";
    }

    @Override
    public void apply() {
        EcoreUtil.remove(element);
    }
}
