// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

import java.util.List;
import java.util.function.Predicate;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

/** What the model allows in an element, and the sentences that say so. */
final class Allowed {
    private Allowed() {
    }

    /** Whether a feature is written as an element: a contained part, or an attribute that takes several values. */
    static boolean isElement(EStructuralFeature feature) {
        return feature instanceof EReference r ? r.isContainment() : feature.isMany();
    }

    /** The values of a feature that takes several. */
    @SuppressWarnings("unchecked") // A many-valued feature holds a list of its type: that is EMF's contract.
    static List<Object> list(EObject owner, EStructuralFeature feature) {
        return (List<Object>) owner.eGet(feature);
    }

    /** The sentence about an element that is not known. */
    static String elements(EObject parent, EAttribute values, String found) {
        if (values != null) {
            return "the element " + values.getName() + " holds the element " + Words.quote(found)
                    + "; it takes only a value as its text.";
        }
        return sentence("element", parent, found, Allowed::isElement);
    }

    /** The sentence about an attribute that is not known. */
    static String attributes(EObject part, String found) {
        return sentence("attribute", part, found, feature -> !isElement(feature));
    }

    private static String sentence(String kind, EObject part, String found, Predicate<EStructuralFeature> which) {
        List<String> names = part.eClass().getEAllStructuralFeatures().stream().filter(which)
                .map(EStructuralFeature::getName).toList();
        return Words.part(part) + " has no " + kind + " " + Words.quote(found)
                + (names.isEmpty() ? "; none is allowed." : "; allowed " + Words.are(names) + ".");
    }
}
