// SPDX-License-Identifier: EPL-2.0
package pitchstack.export;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** Rows of cells as spreadsheets read them; a cell that holds a separator or a quotation mark is put in quotation marks. */
public final class Cells {
    private Cells() {
    }

    /** A file: commas between the cells (RFC 4180). */
    public static String commas(List<List<String>> rows) {
        return text(rows, CSVFormat.RFC4180);
    }

    /** A clipboard: tabs between the cells. */
    public static String tabs(List<List<String>> rows) {
        return text(rows, CSVFormat.RFC4180.builder().setDelimiter('\t').get());
    }

    private static String text(List<List<String>> rows, CSVFormat format) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter csv = new CSVPrinter(text, format)) {
            for (List<String> row : rows) {
                csv.printRecord(row);
            }
        } catch (IOException e) {
            throw new UncheckedIOException("A string cannot fail to be written to", e);
        }
        return text.toString();
    }
}
