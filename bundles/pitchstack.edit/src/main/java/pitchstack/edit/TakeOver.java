// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.List;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import pitchstack.model.Positioner;

/**
 * Makes a document say what another one says.
 *
 * @param document what is changed
 * @param other what it is to say; it stays as it is
 * @param label what undo calls it
 */
public record TakeOver(Positioner document, Positioner other, String label) implements Edit {
    @Override
    public void apply() {
        Positioner copy = EcoreUtil.copy(other);
        for (EStructuralFeature feature : copy.eClass().getEAllStructuralFeatures()) {
            // A list is copied first, since taking an element into the document takes it out of the copy.
            Object value = copy.eGet(feature) instanceof List<?> list ? List.copyOf(list) : copy.eGet(feature);
            document.eSet(feature, value);
        }
    }
}
