// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Sizes and fields that standards set, and customs that are from memory of them, as said. */
class StandardsTest {
    private static final long INCH = 25_400_000_000_000L;
    private static final long MM = 1_000_000_000_000L;

    @TempDir
    Path temporary;

    /** ISO 216 and 5457: trimmed sheets; drawing space with 20 mm on the left and 10 mm elsewhere. */
    @ParameterizedTest
    @CsvSource({"A4, 210, 297, 180, 277", "A3, 420, 297, 390, 277", "A2, 594, 420, 564, 400", "A1, 841, 594, 811, 574"})
    void sheetsHaveTheSizesOfIso5457(SheetSize sheet, double width, double height, double spaceWidth, double spaceHeight) {
        assertEquals(List.of(width, height), List.of(sheet.widthMm(), sheet.heightMm()));
        assertEquals(List.of(spaceWidth, spaceHeight), List.of(sheet.drawingSpace().width(), sheet.drawingSpace().height()));
        assertEquals(20, sheet.drawingSpace().left());
    }

    /** ISO 7200:2004: the mandatory fields of a title block. */
    @Test
    void titleBlockHasTheFieldsOfIso7200() throws IOException {
        Drawing drawing = Devices.drawn(Devices.example("cross-cut-fence"));
        List<String> texts = part(drawing, "title-block").marks().stream().filter(Mark.Text.class::isInstance)
                .map(mark -> ((Mark.Text) mark).text()).toList();
        assertTrue(texts.containsAll(List.of("Legal owner", "Identification number", "Date of issue", "Title, supplementary title",
                "Approved by", "Created by", "Document type", "Sheet, A3")), texts.toString());
        assertTrue(texts.containsAll(List.of("Example workshop", "PS-EX-001", "2026-01-15", "Cross-cut fence",
                "Fixture drawing", "1/1", "A")), texts.toString());
        Box block = part(drawing, "title-block").box();
        assertEquals(180, block.width(), 1e-9);
        assertEquals(List.of(410.0, 10.0), List.of(block.right(), block.bottom()));
    }

    @Test
    void aTextThatIsLongerThanItsFieldEndsWithDots() throws IOException {
        Part block = part(Devices.drawn(Devices.wordy(temporary)), "title-block");
        assertTrue(block.marks().stream().anyMatch(mark -> mark instanceof Mark.Text text && text.text().endsWith("…")));
    }

    /** ISO 5455: 1, 2 and 5 times powers of ten. */
    @Test
    void takesScalesOfIso5455Only() {
        assertEquals(Optional.of("1:2"), StandardScale.parse(" 1 : 2 ").map(StandardScale::toString));
        for (String none : List.of("1:3", "2:2", "4:1", "1", "1:0", "x")) {
            assertTrue(StandardScale.parse(none).isEmpty(), none);
        }
        assertTrue(StandardScale.ALL.stream().allMatch(scale -> String.valueOf(Math.max(scale.paper(), scale.real()))
                .matches("[125]0*") && Math.min(scale.paper(), scale.real()) == 1));
    }

    /** ISO 3098: 1.8, 2.5, 3.5 and 5 mm are letter heights (from memory); 1.8 mm only heads the fields of tables. */
    @ParameterizedTest
    @EnumSource(SheetSize.class)
    void lettersHaveStandardHeights(SheetSize sheet) throws IOException {
        if (Devices.draw(Devices.small(temporary), Optional.of(sheet)) instanceof DrawingAnswer.Drawn drawn) {
            Set<Double> heights = drawn.drawing().marks().stream().filter(Mark.Text.class::isInstance)
                    .map(mark -> ((Mark.Text) mark).heightMm()).collect(Collectors.toSet());
            assertTrue(Set.of(1.8, 2.5, 3.5).containsAll(heights), heights.toString());
        }
    }

    /** ISO 128: wide to narrow is 2 : 1. */
    @Test
    void wideLinesAreTwiceAsWideAsNarrowOnes() {
        assertEquals(2, Pen.OUTLINE.widthMm() / Pen.THIN.widthMm());
        assertEquals(List.of(0.25, 0.25, 0.25), List.of(Pen.HIDDEN.widthMm(), Pen.CHAIN.widthMm(), Pen.PHANTOM.widthMm()));
    }

    /** ISO 129-1 and ASME Y14.5, from memory: zeros before and behind. */
    @Test
    void numbersFollowTheCustomsOfTheirUnit() {
        assertEquals("6.35", Convention.ISO.number(INCH / 4));
        assertEquals(".250", Convention.ASME.number(INCH / 4));
        assertEquals("0.02", Convention.ISO.number(MM / 50));
        assertEquals("12", Convention.ISO.number(12 * MM));
        assertEquals("12.000", Convention.ASME.number(12 * INCH));
        assertEquals(".0625", Convention.ASME.number(INCH / 16));
        assertEquals("−.410", Convention.ASME.number(-INCH * 41 / 100));
        assertEquals("−0.41", Convention.ISO.number(-MM * 41 / 100));
        assertEquals("0", Convention.ASME.number(0));
        // π mm: 3.14159265 mm; in inches 0.123684…
        assertEquals("3.1416", Convention.ISO.number(3_141_592_653_590L));
        assertEquals(".12368", Convention.ASME.number(3_141_592_653_590L));
    }

    private static Part part(Drawing drawing, String name) {
        return drawing.parts().stream().filter(part -> part.name().equals(name)).findFirst().orElseThrow();
    }
}
