// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.card;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import pitchstack.export.Cells;
import pitchstack.export.drawing.LiberationSans;
import pitchstack.export.drawing.PdfDrawing;

/** The kinds of file that a card can be written to. */
public enum CardFormat {
    /** For paper. */
    PDF,
    /** For a screen at the machine. */
    HTML,
    /** A workbook. */
    XLSX,
    /** The targets alone, for any spreadsheet. */
    CSV;

    /** What the name of such a file ends with, without the point. */
    public String ending() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** All endings. */
    public static List<String> endings() {
        return Arrays.stream(values()).map(CardFormat::ending).toList();
    }

    /** The format with an ending, which must be one of {@link #endings()}. */
    public static CardFormat of(String ending) {
        return valueOf(ending.toUpperCase(Locale.ROOT));
    }

    /** The whole file, the same for the same card on every run. */
    public byte[] bytes(SettingCard card) {
        return switch (this) {
            case PDF -> pdf(card);
            case HTML -> CardHtml.of(card).getBytes(StandardCharsets.UTF_8);
            case XLSX -> CardWorkbook.of(card);
            case CSV -> Cells.commas(CardRows.targets(card)).getBytes(StandardCharsets.UTF_8);
        };
    }

    private static byte[] pdf(SettingCard card) {
        LiberationSans letters = new LiberationSans();
        return PdfDrawing.of(CardSheets.of(card, letters), letters);
    }
}
