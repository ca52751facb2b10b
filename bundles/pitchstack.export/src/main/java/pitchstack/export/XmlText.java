// SPDX-License-Identifier: EPL-2.0
package pitchstack.export;

/** Text made fit to stand in XML, in an attribute as between tags. */
public final class XmlText {
    private static final String REPLACEMENT = "\uFFFD";

    private XmlText() {
    }

    /** The text with the marks of XML escaped, and what XML 1.0 (section 2.2) does not allow at all replaced. */
    public static String of(String text) {
        StringBuilder escaped = new StringBuilder(text.length());
        text.codePoints().forEach(c -> escaped.append(of(c)));
        return escaped.toString();
    }

    private static String of(int c) {
        return switch (c) {
            case '&' -> "&amp;";
            case '<' -> "&lt;";
            case '>' -> "&gt;";
            case '"' -> "&quot;";
            case '\t', '\n', '\r' -> " ";
            default -> isAllowed(c) ? Character.toString(c) : REPLACEMENT;
        };
    }

    private static boolean isAllowed(int c) {
        return c >= 0x20 && c <= 0xD7FF || c >= 0xE000 && c <= 0xFFFD || c >= 0x10000;
    }
}
