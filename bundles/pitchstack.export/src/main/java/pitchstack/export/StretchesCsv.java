// SPDX-License-Identifier: EPL-2.0
package pitchstack.export;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import pitchstack.core.coverage.Stretch;
import pitchstack.core.units.Scale;

/**
 * Stretches of the travel as a table: commas, a decimal point, lines that end as RFC 4180 wants, a header with the
 * unit. Numbers are exact: millimetres on a linear axis, whatever the unit of the file, degrees to 15 decimals on a
 * rotary one. Both ends belong to the stretch, so that the next one begins one femtometre higher.
 */
public final class StretchesCsv {
    private StretchesCsv() {
    }

    /**
     * A table with one row a stretch, in the order given: from, to, length, reached.
     *
     * @param scale the scale whose counts they are in
     * @param stretches gaps, or all stretches of a coverage
     */
    public static String of(Scale scale, List<Stretch> stretches) {
        String unit = scale.turn() == 0 ? "mm" : "deg";
        StringBuilder text = new StringBuilder();
        try (CSVPrinter csv = new CSVPrinter(text, CSVFormat.RFC4180)) {
            csv.printRecord("from (" + unit + ")", "to (" + unit + ")", "length (" + unit + ")", "reached");
            for (Stretch stretch : stretches) {
                csv.printRecord(scale.decimal(stretch.low()), scale.decimal(stretch.high()),
                        scale.decimal(stretch.high() - stretch.low()), ReachedWords.of(stretch.reached()));
            }
        } catch (IOException e) {
            throw new UncheckedIOException("A string cannot fail to be written to", e);
        }
        return text.toString();
    }
}
