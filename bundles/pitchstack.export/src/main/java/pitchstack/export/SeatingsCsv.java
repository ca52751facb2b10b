// SPDX-License-Identifier: EPL-2.0
package pitchstack.export;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import pitchstack.core.coverage.RowSeatings;
import pitchstack.core.coverage.Seatings;
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
            for (RowSeatings row : seatings.rows()) {
                for (int tooth = 0; tooth < row.counts().length; tooth++) {
                    csv.printRecord(PlanCsv.stage(axis, row.stage()), row.row().word(), tooth, row.counts()[tooth]);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException("A string cannot fail to be written to", e);
        }
        return text.toString();
    }
}
