// SPDX-License-Identifier: EPL-2.0
package pitchstack.export;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import pitchstack.export.TargetList.BadRow;

/**
 * The cells of a table from a spreadsheet. A tab anywhere in the first row that is not empty separates the cells, else a
 * semicolon; else, if that row is not a lone number with a decimal comma, a comma.
 *
 * @param rows the rows that are not empty
 * @param bad the rows in which a quotation mark is not closed
 */
record SpreadsheetText(List<Line> rows, List<BadRow> bad) {
    private static final String DECIMAL_COMMA = "\\s*[-+−]?\\d*,\\d+\\s*[^\\d,]*";

    /**
     * A row.
     *
     * @param number the line in which it begins, from 1
     * @param cells the cells without blanks around them
     */
    record Line(int number, List<String> cells) { }

    static SpreadsheetText of(String text) {
        // Spreadsheets mark UTF-8 by a first character that is none, and put hard blanks before units.
        String plain = (text.startsWith("\uFEFF") ? text.substring(1) : text).replace('\u00A0', ' ').replace('\u202F', ' ');
        String[] lines = plain.split("\\R", -1);
        CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(delimiter(lines)).setIgnoreEmptyLines(false).get();
        SpreadsheetText table = new SpreadsheetText(new ArrayList<>(), new ArrayList<>());
        int done = 0;
        while (done < lines.length) {
            done = table.read(lines, done, format);
        }
        return table;
    }

    /** What separates the cells. In one column nothing does; commas then belong to the numbers. */
    private static char delimiter(String[] lines) {
        for (String line : lines) {
            if (!line.isBlank()) {
                boolean oneColumn = !line.contains(",") || line.matches(DECIMAL_COMMA);
                return line.contains("\t") ? '\t' : line.contains(";") || oneColumn ? ';' : ',';
            }
        }
        return ',';
    }

    /** Reads on from a line up to the end, or to one that cannot be read; tells how many lines are done with. */
    private int read(String[] lines, int from, CSVFormat format) {
        int begun = from;
        String rest = String.join("\n", List.of(lines).subList(from, lines.length));
        try (CSVParser parser = CSVParser.parse(new StringReader(rest), format)) {
            Iterator<CSVRecord> records = parser.iterator();
            while (records.hasNext()) {
                List<String> cells = records.next().stream().map(String::strip).toList();
                if (!cells.stream().allMatch(String::isEmpty)) {
                    rows.add(new Line(begun + 1, cells));
                }
                begun = from + (int) parser.getCurrentLineNumber();
            }
            return lines.length;
        } catch (IOException | UncheckedIOException unclosed) {
            bad.add(new BadRow(begun + 1, "A quotation mark in this row is not closed, or has text behind it."));
            return begun + 1;
        }
    }
}
