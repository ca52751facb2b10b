// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import pitchstack.model.Axis;
import pitchstack.model.ShiftLimit;
import pitchstack.model.Stage;
import pitchstack.model.Target;
import pitchstack.model.WornRange;

/**
 * Takes an element out of the document.
 *
 * @param element a stage, a target, a worn range or a shift limit
 */
public record RemoveElement(EObject element) implements Edit {
    /** Refuses what cannot be removed alone. */
    public RemoveElement {
        if (!canRemove(element)) {
            throw new IllegalArgumentException("Not removable: " + element);
        }
    }

    /** Whether an element can be removed: a stage, a target, a worn range or a shift limit that is part of a document. */
    public static boolean canRemove(EObject element) {
        return (element instanceof Stage || element instanceof Target || element instanceof WornRange
                || element instanceof ShiftLimit)
                && element.eContainer() != null;
    }

    @Override
    public String label() {
        if (element instanceof Stage stage) {
            return "Delete stage “" + stage.getName() + "”";
        }
        if (element instanceof Target target) {
            return "Delete target “" + target.getName() + "”";
        }
        return element instanceof WornRange ? "Delete worn range" : "Delete shift limit";
    }

    @Override
    public void apply() {
        if (element instanceof Stage stage) {
            Axis axis = (Axis) stage.eContainer();
            LimitNumbers.close(axis, axis.getStages().indexOf(stage));
        }
        EcoreUtil.remove(element);
    }
}
