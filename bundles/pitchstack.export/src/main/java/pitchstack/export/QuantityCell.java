// SPDX-License-Identifier: EPL-2.0
package pitchstack.export;

import java.util.regex.Pattern;
import pitchstack.core.units.QuantityException;

/** A length or an angle in the cell of a spreadsheet: with a decimal comma or point, and a unit of its own or its column's. */
final class QuantityCell {
    private static final Pattern BARE_NUMBER = Pattern.compile("[-+]?[0-9./ ]+");

    private QuantityCell() {
    }

    /**
     * The text that a scale can read.
     *
     * @param text the cell
     * @param unit of the column, or nothing; a bare number takes it
     * @throws QuantityException if the number has separators between thousands
     */
    static String text(String text, String unit) {
        int comma = text.indexOf(',');
        if (comma >= 0 && (comma != text.lastIndexOf(',') || text.contains("."))) {
            throw new QuantityException("“" + text + "” has more than one comma or point; write a number without separators"
                    + " between thousands.");
        }
        String number = text.replace(',', '.').replace('−', '-');
        return unit.isEmpty() || !BARE_NUMBER.matcher(number).matches() ? number : number + " " + unit;
    }
}
