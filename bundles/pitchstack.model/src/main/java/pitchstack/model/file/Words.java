// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

import java.util.List;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Lists and parts of a document in words, for messages. */
final class Words {
    /** A longer text is cut, so that a message stays one that can be read. */
    private static final int LONGEST_QUOTE = 60;

    private Words() {
    }

    /** “is a”, “are a and b”, “are a, b and c”. */
    static String are(List<String> words) {
        if (words.size() == 1) {
            return "is " + words.get(0);
        }
        int last = words.size() - 1;
        return "are " + String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }

    /** A text in quotation marks, cut where it is long. */
    static String quote(String text) {
        if (text.length() <= LONGEST_QUOTE) {
            return "“" + text + "”";
        }
        int cut = Character.isHighSurrogate(text.charAt(LONGEST_QUOTE - 1)) ? LONGEST_QUOTE - 1 : LONGEST_QUOTE;
        return "“" + text.substring(0, cut) + "…”";
    }

    /** A part of a document as {@code Stage “Rack”}: its kind, and its name where it has one. */
    static String part(EObject part) {
        for (String naming : List.of("name", "id", "title")) {
            EStructuralFeature feature = part.eClass().getEStructuralFeature(naming);
            if (feature instanceof EAttribute && part.eGet(feature) instanceof String name && !name.isBlank()) {
                return part.eClass().getName() + " " + quote(name);
            }
        }
        return part.eClass().getName();
    }
}
