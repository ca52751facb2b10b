// SPDX-License-Identifier: EPL-2.0
package pitchstack.export;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import pitchstack.core.coverage.Seatings;
import pitchstack.core.coverage.WearMark;
import pitchstack.core.stack.AxisSpec;

/** How often each tooth is seated as a table: one row a tooth, lowest stage first and its base row before its rider row. */
public final class SeatingsCsv {
    private SeatingsCsv() {
    }

    /**
     * The table: stage, row, tooth, seatings.
     *
     * @param axis the axis that the seatings were counted on
     * @param seatings the counts
     */
    public static String of(AxisSpec axis, Seatings seatings) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter csv = new CSVPrinter(text, CSVFormat.RFC4180)) {
            csv.printRecord("stage", "row", "tooth", "seatings");
            for (int j = 0; j < axis.stages().size(); j++) {
                for (WearMark.Row row : WearMark.Row.values()) {
                    int[] counts = seatings.of(j, row);
                    for (int tooth = 0; tooth < counts.length; tooth++) {
                        csv.printRecord(PlanCsv.stage(axis, j), row.name().toLowerCase(Locale.ROOT), tooth, counts[tooth]);
                    }
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException("A string cannot fail to be written to", e);
        }
        return text.toString();
    }
}
