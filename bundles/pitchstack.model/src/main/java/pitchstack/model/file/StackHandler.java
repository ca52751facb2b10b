// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

import java.util.ArrayDeque;
import java.util.Deque;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.xml.sax.Attributes;
import org.xml.sax.Locator;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;
import pitchstack.model.Positioner;
import pitchstack.model.PitchstackPackage;
import pitchstack.model.file.StackFileException.Problem;

/**
 * Builds a positioner from the elements of a file. Strict where the general XMI reader is lenient: what the model does
 * not know is refused at its place, and nothing in a file can name another file, a type or a schema.
 */
final class StackHandler extends DefaultHandler {
    /** An element that is being read: a part of the model, or one value of an attribute that takes several. */
    private record Open(EObject part, EAttribute values, StringBuilder text) { }

    private final Spot spot;
    private final RunReferences references;
    private final AttributeReader attributes;
    private final Deque<Open> open = new ArrayDeque<>();
    private Positioner positioner;
    private int elements;

    StackHandler(Spot spot) {
        this.spot = spot;
        this.references = new RunReferences(spot);
        this.attributes = new AttributeReader(spot, references);
    }

    /** Whether the root element has ended. */
    boolean finished() {
        return positioner != null && open.isEmpty();
    }

    /** The part that is being read, in words to follow what is wrong in it; empty outside the root. */
    String within() {
        return open.isEmpty() ? "" : " in " + Words.part(open.peek().part());
    }

    /** The positioner, once the document has ended. */
    Positioner positioner() {
        return positioner;
    }

    @Override
    public void setDocumentLocator(Locator locator) {
        spot.follow(locator);
    }

    @Override
    public void startElement(String uri, String name, String tag, Attributes given) throws SAXException {
        if (++elements > StackFile.MAX_ELEMENTS) {
            throw spot.tag(Problem.TOO_LARGE, "a stack file may hold " + StackFile.MAX_ELEMENTS
                    + " elements, and this is one more.");
        }
        if (open.isEmpty()) {
            new RootRule(spot).check(uri, name);
            spot.requireVersion1();
            positioner = (Positioner) EcoreUtil.create(PitchstackPackage.Literals.POSITIONER);
            open.push(new Open(positioner, null, new StringBuilder()));
            attributes.read(positioner, given);
            return;
        }
        Open parent = open.peek();
        EStructuralFeature feature = uri.isEmpty() && parent.values() == null ? child(parent.part(), name) : null;
        if (feature == null) {
            throw spot.tag(Problem.WRONG_CONTENT, Allowed.elements(parent.part(), parent.values(), tag));
        }
        start(parent.part(), feature, given);
    }

    private void start(EObject owner, EStructuralFeature feature, Attributes given) throws SAXException {
        if (feature instanceof EAttribute values) {
            if (given.getLength() > 0) {
                throw spot.attribute(given.getQName(0), Problem.WRONG_CONTENT, "the element " + feature.getName()
                        + " takes no attribute, only a value as its text.");
            }
            open.push(new Open(owner, values, new StringBuilder()));
            return;
        }
        EObject part = EcoreUtil.create(((EReference) feature).getEReferenceType());
        if (feature.isMany()) {
            Allowed.list(owner, feature).add(part);
        } else if (owner.eIsSet(feature)) {
            throw spot.tag(Problem.WRONG_CONTENT, Words.part(owner) + " has a second " + feature.getName()
                    + "; one is allowed.");
        } else {
            owner.eSet(feature, part);
        }
        open.push(new Open(part, null, new StringBuilder()));
        attributes.read(part, given);
    }

    private static EStructuralFeature child(EObject part, String name) {
        EStructuralFeature feature = part.eClass().getEStructuralFeature(name);
        return feature != null && Allowed.isElement(feature) ? feature : null;
    }

    @Override
    public void characters(char[] chars, int start, int length) throws SAXException {
        Open current = open.peek();
        if (current.values() != null) {
            current.text().append(chars, start, length);
        } else if (!new String(chars, start, length).isBlank()) {
            throw spot.here(Problem.WRONG_CONTENT, Words.part(current.part()) + " holds the text "
                    + Words.quote(new String(chars, start, length).strip()) + "; it takes attributes and elements only.");
        }
    }

    @Override
    public void endElement(String uri, String name, String tag) throws SAXException {
        Open ended = open.pop();
        if (ended.values() == null) {
            return;
        }
        try {
            Allowed.list(ended.part(), ended.values()).add(Values.read(ended.values(), ended.text().toString().strip()));
        } catch (BadValueException e) {
            throw spot.here(Problem.WRONG_CONTENT, tag + " " + Words.quote(ended.text().toString()) + " "
                    + e.getMessage());
        }
    }

    @Override
    public void endDocument() throws SAXException {
        references.resolve();
    }
}
