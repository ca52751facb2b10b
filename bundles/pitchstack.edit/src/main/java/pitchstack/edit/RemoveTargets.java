// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.List;
import org.eclipse.emf.ecore.util.EcoreUtil;
import pitchstack.model.Target;

/**
 * Takes targets out of the document.
 *
 * @param targets at least one
 */
public record RemoveTargets(List<Target> targets) implements Edit {
    /** Copies the list; refuses an empty one. */
    public RemoveTargets {
        targets = List.copyOf(targets);
        if (targets.isEmpty()) {
            throw new IllegalArgumentException("No target to remove");
        }
    }

    @Override
    public String label() {
        return targets.size() == 1 ? new RemoveElement(targets.get(0)).label() : "Delete " + targets.size() + " targets";
    }

    @Override
    public void apply() {
        targets.forEach(EcoreUtil::remove);
    }
}
