// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.card;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/**
 * Writes a card as an Office Open XML workbook (XLSX): a sheet for the targets, one for each pocket table, and one for the
 * rest.
 */
final class CardWorkbook {
    private static final String CORE = "docProps/core.xml";
    /** Names of sheets have at most 31 characters. */
    private static final List<String> POCKET = List.of("One stage forward", "Forward and next back");
    private static final String NUMBER = "-?[0-9]+(\\.[0-9]+)?";
    /** Characters; what is longer than that is read in the cell. */
    private static final double MOST_WIDTH = 60;

    private CardWorkbook() {
    }

    /** The bytes of the file. */
    static byte[] of(SettingCard card) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            try (Workbook book = new Workbook(bytes, "Pitchstack", "1.0")) {
                book.properties().setTitle("Setting card: " + card.head().title());
                fill(book.newWorksheet("Setting card"), CardRows.targets(card));
                for (int i = 0; i < card.pocket().size(); i++) {
                    fill(book.newWorksheet(POCKET.get(i)), CardRows.pocket(card, card.pocket().get(i)));
                }
                fill(book.newWorksheet("Read first"), CardRows.about(card));
            }
            return dated(bytes.toByteArray(), card.head().date());
        } catch (IOException e) {
            throw new UncheckedIOException("The workbook cannot be put together", e);
        }
    }

    private static void fill(Worksheet sheet, List<List<String>> rows) {
        for (int r = 0; r < rows.size(); r++) {
            List<String> row = rows.get(r);
            for (int c = 0; c < row.size(); c++) {
                String cell = row.get(c);
                if (r > 0 && cell.matches(NUMBER)) {
                    sheet.value(r, c, new BigDecimal(cell));
                } else if (!cell.isEmpty()) {
                    sheet.value(r, c, cell);
                }
            }
        }
        for (int c = 0; c < rows.get(0).size(); c++) {
            int column = c;
            int longest = rows.stream().filter(row -> column < row.size()).mapToInt(row -> row.get(column).length()).max()
                    .orElse(0);
            sheet.width(c, Math.min(MOST_WIDTH, longest + 2.0));
        }
        sheet.range(0, 0, 0, rows.get(0).size() - 1).style().bold().set();
        sheet.freezePane(0, 1);
    }

    /**
     * The same file with the card's date in place of the time at which it was written, so that it comes out alike every
     * time. The library leaves the sizes of its entries to the end of the file, where only a reader of files finds them.
     */
    private static byte[] dated(byte[] book, LocalDate date) throws IOException {
        Path file = Files.createTempFile("card", ".xlsx");
        try {
            Files.write(file, book);
            return dated(file, date.atStartOfDay());
        } finally {
            Files.delete(file);
        }
    }

    private static byte[] dated(Path book, LocalDateTime midnight) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipFile from = new ZipFile(book.toFile()); ZipOutputStream to = new ZipOutputStream(bytes)) {
            for (ZipEntry entry : Collections.list(from.entries())) {
                ZipEntry same = new ZipEntry(entry.getName());
                same.setTimeLocal(midnight);
                to.putNextEntry(same);
                byte[] content = from.getInputStream(entry).readAllBytes();
                to.write(entry.getName().equals(CORE) ? created(content, midnight) : content);
                to.closeEntry();
            }
        }
        return bytes.toByteArray();
    }

    private static byte[] created(byte[] properties, LocalDateTime midnight) {
        return new String(properties, StandardCharsets.UTF_8)
                .replaceAll("(<dcterms:created[^>]*>)[^<]*<", "$1" + midnight + ":00Z<").getBytes(StandardCharsets.UTF_8);
    }
}
