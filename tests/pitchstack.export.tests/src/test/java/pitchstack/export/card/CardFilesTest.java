// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.card;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import pitchstack.core.plan.StopOrder;
import pitchstack.export.drawing.Box;
import pitchstack.export.drawing.Drawing;
import pitchstack.export.drawing.Extents;
import pitchstack.export.drawing.LiberationSans;
import pitchstack.export.drawing.Mark;
import pitchstack.export.drawing.Part;
import pitchstack.model.Positioner;

/** The files of a card, read back. */
class CardFilesTest {
    private static final LiberationSans LETTERS = new LiberationSans();

    @TempDir
    private Path folder;

    static List<Named<SettingCard>> cards() {
        return Cards.ofAllExamples();
    }

    @ParameterizedTest
    @MethodSource("cards")
    void nothingOnTheSheetsOverlapsOrLeavesThem(SettingCard card) {
        assertLaidOutWell(card);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 6})
    void nothingOverlapsWithLongNamesAndLargeCounts(int stages) throws Exception {
        Positioner positioner = Cards.read(folder, Texts.large(stages));
        assertLaidOutWell(Cards.of(positioner, positioner.getAxes().get(0), StopOrder.ONE_BY_ONE));
    }

    private static void assertLaidOutWell(SettingCard card) {
        for (Drawing sheet : CardSheets.of(card, LETTERS)) {
            List<Mark> texts = new ArrayList<>();
            for (Part part : sheet.parts()) {
                assertTrue(sheet.sheet().drawingSpace().holds(part.box().inset(0.01)), part.name() + " at " + part.box());
                sheet.parts().stream().filter(other -> other != part).forEach(other -> assertFalse(
                        part.box().inset(0.01).overlaps(other.box()), part.name() + " and " + other.name()));
                part.marks().stream().filter(Mark.Text.class::isInstance).forEach(texts::add);
            }
            for (int i = 0; i < texts.size(); i++) {
                Box one = Extents.of(texts.get(i), LETTERS).inset(0.05);
                for (Mark other : texts.subList(i + 1, texts.size())) {
                    assertFalse(one.overlaps(Extents.of(other, LETTERS)), texts.get(i) + " and " + other);
                }
            }
        }
    }

    /** The height at which a sign is read at arm's length, 0.7 m, at 20 minutes of arc, is 4.1 mm. */
    @ParameterizedTest
    @MethodSource("cards")
    void countsAreReadAtArmsLength(SettingCard card) {
        double least = 700 * Math.tan(Math.toRadians(20 / 60.0));
        List<String> counts = card.entries().stream().flatMap(entry -> entry.way().stream())
                .flatMap(way -> way.fromPrevious().setting().toList().stream()).map(n -> String.valueOf(n).replace('-', '−'))
                .toList();
        List<String> large = CardSheets.of(card, LETTERS).stream().flatMap(sheet -> sheet.marks().stream())
                .filter(Mark.Text.class::isInstance).map(Mark.Text.class::cast)
                .filter(text -> text.heightMm() > least && text.text().matches("−?[0-9]+")).map(Mark.Text::text).toList();
        assertEquals(counts, large);
    }

    @Test
    void thePdfHasEveryEntryWithWhatTheScaleReads() throws Exception {
        SettingCard card = Cards.ofExample("cross-cut-fence");
        try (PDDocument pdf = Loader.loadPDF(CardFormat.PDF.bytes(card))) {
            String text = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
            for (String expected : List.of("Setting card: Cross-cut fence", "3. Bottom rail", "Scale reads 9.760 in",
                    "Fine row: 1 tooth back, from 0 to −1.", "over worn teeth", "revision A · 2026-02-03",
                    "A printed stage is a positioning aid", "Rack forward, Fine row back", "Sheet 1 of 3")) {
                assertTrue(text.contains(expected), expected + " in " + text);
            }
        }
    }

    @Test
    void theHtmlIsWellFormedAndSaysTheSame() throws Exception {
        SettingCard card = Cards.ofExample("cross-cut-fence");
        String html = new String(CardFormat.HTML.bytes(card), StandardCharsets.UTF_8);
        String text = xml(html.substring(html.indexOf("<html")).getBytes(StandardCharsets.UTF_8)).getDocumentElement()
                .getTextContent();
        assertTrue(text.contains("Scale reads 9.760 in") && text.contains("over worn teeth"), text);
    }

    @Test
    void namesCannotBreakTheHtml() throws Exception {
        Positioner positioner = Cards.read(folder, Texts.SMALL.replace("Only over", "&lt;script&gt; &amp; &quot; over"));
        SettingCard card = Cards.of(positioner, positioner.getAxes().get(0), StopOrder.GIVEN);
        String html = new String(CardFormat.HTML.bytes(card), StandardCharsets.UTF_8);
        assertFalse(html.contains("<script"), html);
        xml(html.substring(html.indexOf("<html")).getBytes(StandardCharsets.UTF_8));
    }

    /** 9.76 in is 247.904 mm, which a spreadsheet must find as a number, not as text. */
    @Test
    void theWorkbookHoldsNumbers() throws Exception {
        Map<String, byte[]> parts = unzip(CardFormat.XLSX.bytes(Cards.ofExample("cross-cut-fence")));
        NodeList cells = xml(parts.get("xl/worksheets/sheet1.xml")).getElementsByTagName("c");
        Map<String, String> numbers = new HashMap<>();
        for (int i = 0; i < cells.getLength(); i++) {
            Element cell = (Element) cells.item(i);
            if (!cell.getAttribute("t").equals("s")) {
                numbers.put(cell.getAttribute("r"), cell.getTextContent());
            }
        }
        assertEquals("247.904", numbers.get("E4"));
        assertEquals("-1", numbers.get("H4"));
        assertTrue(new String(parts.get("docProps/core.xml"), StandardCharsets.UTF_8).contains(">2026-02-03T00:00:00Z<"));
    }

    @ParameterizedTest
    @EnumSource(CardFormat.class)
    void comesOutTheSameEveryTime(CardFormat format) throws Exception {
        assertArrayEquals(format.bytes(Cards.ofExample("slide-plate")), format.bytes(Cards.ofExample("slide-plate")));
    }

    private static Document xml(byte[] text) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new ByteArrayInputStream(text));
    }

    private static Map<String, byte[]> unzip(byte[] file) throws Exception {
        Map<String, byte[]> parts = new HashMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                parts.put(entry.getName(), zip.readAllBytes());
            }
        }
        return parts;
    }
}
