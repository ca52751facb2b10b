// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.dxf;

/** Text made fit for Release 12, which knows ASCII and three signs of its own: %%d, %%p and %%c. */
final class DxfText {
    private static final int LAST_ASCII = 0x7E;
    private static final int LAST_BASIC = 0xFFFF;

    private DxfText() {
    }

    /**
     * The text in one line of ASCII. Signs with an ASCII twin become that; others are written as \U+XXXX, which newer
     * readers show as the sign.
     */
    static String of(String text) {
        StringBuilder ascii = new StringBuilder(text.length());
        text.replace("%%", "%%%%%%").codePoints().forEach(c -> ascii.append(of(c)));
        return ascii.toString();
    }

    private static String of(int c) {
        return switch (c) {
            case '°' -> "%%d";
            case '±' -> "%%p";
            case 'Ø', '⌀' -> "%%c";
            case '−', '–' -> "-";
            case '“', '”', '″' -> "\"";
            case '’', '′' -> "'";
            case '×' -> "x";
            case '·' -> ".";
            case 'µ', 'μ' -> "u";
            default -> c < ' ' ? " " : c <= LAST_ASCII ? Character.toString(c)
                    : String.format("\\U+%04X", c <= LAST_BASIC ? c : '?');
        };
    }
}
