// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * Sets one stored fact of one element.
 *
 * @param element the element
 * @param feature what is set
 * @param value the new value, or {@code null} to clear it
 * @param label what the person did
 */
public record SetValue(EObject element, EStructuralFeature feature, Object value, String label) implements Edit {
    @Override
    public void apply() {
        if (value == null) {
            element.eUnset(feature);
        } else {
            element.eSet(feature, value);
        }
    }
}
