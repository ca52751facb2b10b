// SPDX-License-Identifier: EPL-2.0
package pitchstack.export;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
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
        return text(csv -> {
            csv.printRecord(header(scale, "reached"));
            for (Stretch stretch : stretches) {
                csv.printRecord(row(scale, stretch.low(), stretch.high(), ReachedWords.of(stretch.reached())));
            }
        });
    }

    /**
     * A table that compares two coverages of the same travel, with one row for each stretch in which both stay alike:
     * from, to, length, reached, supposed.
     *
     * @param scale the scale whose counts they are in
     * @param now all stretches of the one
     * @param supposed all stretches of the other
     */
    public static String of(Scale scale, List<Stretch> now, List<Stretch> supposed) {
        return text(csv -> {
            csv.printRecord(header(scale, "reached", "supposed"));
            int i = 0;
            int k = 0;
            while (i < now.size() && k < supposed.size()) {
                Stretch one = now.get(i);
                Stretch two = supposed.get(k);
                long low = Math.max(one.low(), two.low());
                long high = Math.min(one.high(), two.high());
                if (low <= high) {
                    csv.printRecord(row(scale, low, high, ReachedWords.of(one.reached()), ReachedWords.of(two.reached())));
                }
                i += one.high() == high ? 1 : 0;
                k += two.high() == high ? 1 : 0;
            }
        });
    }

    private interface Content {
        void print(CSVPrinter csv) throws IOException;
    }

    private static String text(Content content) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter csv = new CSVPrinter(text, CSVFormat.RFC4180)) {
            content.print(csv);
        } catch (IOException e) {
            throw new UncheckedIOException("A string cannot fail to be written to", e);
        }
        return text.toString();
    }

    private static List<String> header(Scale scale, String... reached) {
        String unit = scale.turn() == 0 ? " (mm)" : " (deg)";
        List<String> header = new ArrayList<>(List.of("from" + unit, "to" + unit, "length" + unit));
        header.addAll(List.of(reached));
        return header;
    }

    private static List<String> row(Scale scale, long low, long high, String... reached) {
        List<String> row = new ArrayList<>(List.of(scale.decimal(low), scale.decimal(high), scale.decimal(high - low)));
        row.addAll(List.of(reached));
        return row;
    }
}
