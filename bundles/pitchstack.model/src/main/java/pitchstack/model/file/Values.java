// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

import java.util.List;
import java.util.regex.Pattern;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;

/**
 * The values of attributes as a file writes them. Stricter than the conversions of Java, which also take digits of
 * other scripts, a trailing {@code f}, and {@code NaN}.
 */
final class Values {
    private static final Pattern WHOLE = Pattern.compile("-?[0-9]{1,10}");
    private static final Pattern DECIMAL = Pattern.compile("-?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE][+-]?[0-9]{1,4})?");

    private Values() {
    }

    /**
     * Reads a value.
     *
     * @param attribute whose value it is
     * @param text the value as written
     * @return an {@code Integer}, a {@code Double}, an enumerator or the text itself
     * @throws BadValueException if the text is no value of the attribute
     */
    static Object read(EAttribute attribute, String text) throws BadValueException {
        if (attribute.getEAttributeType() instanceof EEnum words) {
            return word(words, text);
        }
        Class<?> type = attribute.getEAttributeType().getInstanceClass();
        if (type == int.class) {
            return whole(text);
        }
        return type == double.class ? decimal(text) : text;
    }

    private static Object word(EEnum words, String text) throws BadValueException {
        EEnumLiteral literal = words.getEEnumLiteralByLiteral(text);
        if (literal == null) {
            List<String> allowed = words.getELiterals().stream().map(EEnumLiteral::getLiteral).toList();
            throw new BadValueException("is not known; allowed " + Words.are(allowed) + ".");
        }
        return literal.getInstance();
    }

    private static Integer whole(String text) throws BadValueException {
        long value = WHOLE.matcher(text).matches() ? Long.parseLong(text) : Long.MAX_VALUE;
        if (value != (int) value) {
            throw new BadValueException("is not a whole number that the program can hold; write it like 24, from "
                    + Integer.MIN_VALUE + " to " + Integer.MAX_VALUE + ".");
        }
        return (int) value;
    }

    private static Double decimal(String text) throws BadValueException {
        double value = DECIMAL.matcher(text).matches() ? Double.parseDouble(text) : Double.NaN;
        if (!Double.isFinite(value)) {
            throw new BadValueException("is not a number that the program can hold; write it like 20.5, with a point.");
        }
        return value;
    }
}
