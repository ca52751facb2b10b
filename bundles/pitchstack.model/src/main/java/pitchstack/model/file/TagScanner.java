// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds an attribute in a tag that a parser has accepted.
 *
 * @param text the text of the file
 * @param start the offset of the tag's "<"
 */
record TagScanner(String text, int start) {
    private static final Pattern NAME = Pattern.compile("<[^\\s/>]+");
    private static final Pattern ATTRIBUTE = Pattern.compile("\\s+([^\\s=]+)\\s*=\\s*(?:\"[^\"]*+\"|'[^']*+')");

    /** The offset of the attribute's name, or empty where it does not stand there. */
    OptionalInt attribute(String name) {
        Matcher m = NAME.matcher(text).region(start, text.length());
        int next = m.lookingAt() ? m.end() : text.length();
        m.usePattern(ATTRIBUTE).region(next, text.length());
        while (m.lookingAt()) {
            if (m.group(1).equals(name)) {
                return OptionalInt.of(m.start(1));
            }
            m.region(m.end(), text.length());
        }
        return OptionalInt.empty();
    }
}
