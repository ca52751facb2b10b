// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.xml.sax.Attributes;
import org.xml.sax.SAXException;
import pitchstack.model.Positioner;
import pitchstack.model.file.StackFileException.Problem;

/**
 * Sets the attributes of a part of the model from those of its element.
 *
 * @param spot where the parser stands
 * @param references takes up what refers to measurement runs
 */
record AttributeReader(Spot spot, RunReferences references) {
    private static final String XMI = "http://www.omg.org/XMI";
    private static final String XMI_VERSION = "2.0";

    /** Sets them all, or refuses the first that the model does not allow. */
    void read(EObject part, Attributes given) throws SAXException {
        for (int i = 0; i < given.getLength(); i++) {
            String tag = given.getQName(i);
            if (given.getURI(i).isEmpty()) {
                set(part, tag, given.getValue(i));
            } else if (!isXmiVersion(part, given, i)) {
                throw unknown(part, tag);
            }
        }
        references.note(part);
    }

    private static boolean isXmiVersion(EObject part, Attributes given, int i) {
        return part instanceof Positioner && given.getURI(i).equals(XMI) && given.getLocalName(i).equals("version")
                && given.getValue(i).equals(XMI_VERSION);
    }

    private void set(EObject part, String name, String text) throws SAXException {
        EStructuralFeature feature = part.eClass().getEStructuralFeature(name);
        if (feature == null || Allowed.isElement(feature)) {
            throw unknown(part, name);
        }
        if (feature instanceof EReference reference) {
            references.refer(part, reference, text);
            return;
        }
        try {
            part.eSet(feature, Values.read((EAttribute) feature, text));
        } catch (BadValueException e) {
            throw spot.attribute(name, Problem.WRONG_CONTENT, name + " = " + Words.quote(text) + " " + e.getMessage());
        }
    }

    private SAXException unknown(EObject part, String name) {
        return spot.attribute(name, Problem.WRONG_CONTENT, Allowed.attributes(part, name));
    }
}
