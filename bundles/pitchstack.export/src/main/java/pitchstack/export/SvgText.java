// SPDX-License-Identifier: EPL-2.0
package pitchstack.export;

import java.util.Arrays;
import java.util.Locale;

/** The text of an SVG file, line by line. */
final class SvgText {
    private final StringBuilder svg = new StringBuilder();

    /**
     * Adds a line.
     *
     * @param format as of {@link String#format}, with {@code %s} alone
     * @param values texts, which are made fit for XML, and numbers, which get four decimals: a tenth of a micrometre on
     *     paper
     */
    void line(String format, Object... values) {
        Object[] written = Arrays.stream(values).map(SvgText::written).toArray();
        svg.append(values.length == 0 ? format : String.format(Locale.ROOT, format, written)).append('\n');
    }

    private static String written(Object value) {
        return value instanceof Double number ? String.format(Locale.ROOT, "%.4f", number) : XmlText.of(value.toString());
    }

    @Override
    public String toString() {
        return svg.toString();
    }
}
