// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * PDF and SVG painted by two libraries that know nothing of each other, PDFBox and JSVG, and compared dot by dot; and the
 * pictures of the user guide, which {@code -Dpictures.renew=true} paints anew.
 */
class SamePictureTest {
    private static final float DPI = 100;
    /** As the guide shows them. */
    private static final float GUIDE_DPI = 80;

    static Stream<String> examples() {
        return Devices.EXAMPLES.stream();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void pdfAndSvgShowTheSame(String example) throws Exception {
        Drawing drawing = Devices.drawn(Devices.example(example));
        BufferedImage pdf = Painted.pdf(PdfDrawing.of(drawing, Devices.LETTERS), DPI);
        BufferedImage svg = Painted.svg(DrawingFormat.SVG.bytes(drawing, Devices.LETTERS), pdf.getWidth(), pdf.getHeight());
        assertSame(pdf, svg);
    }

    private static void assertSame(BufferedImage one, BufferedImage other) {
        int dark = Painted.dark(one);
        assertTrue(dark > 3_000, "Hardly anything is drawn: " + dark);
        // One dot in a thousand of what is drawn: the ends of dashes and the finest letters.
        assertEquals(0, Painted.missing(one, other), dark / 1000.0, "dots of the first that the second lacks");
        assertEquals(0, Painted.missing(other, one), dark / 1000.0, "dots of the second that the first lacks");
    }

    /** The longest line of text with a number in it is left out of one of them. */
    @ParameterizedTest
    @MethodSource("examples")
    void aPictureThatLacksOneLineOfTextIsFoundOut(String example) throws Exception {
        Drawing whole = Devices.drawn(Devices.example(example));
        Mark.Text longest = whole.marks().stream().filter(mark -> mark instanceof Mark.Text text && text.text().matches(".*\\d.*"))
                .map(Mark.Text.class::cast).max(Comparator.comparingInt(text -> text.text().length())).orElseThrow();
        Drawing lacking = new Drawing(whole.sheet(), whole.title(), whole.creator(), whole.date(), whole.parts().stream()
                .map(part -> new Part(part.name(), part.box(), part.marks().stream().filter(mark -> mark != longest).toList()))
                .toList());
        BufferedImage pdf = Painted.pdf(PdfDrawing.of(whole, Devices.LETTERS), DPI);
        BufferedImage svg = Painted.svg(DrawingFormat.SVG.bytes(lacking, Devices.LETTERS), pdf.getWidth(), pdf.getHeight());
        assertThrows(AssertionError.class, () -> assertSame(pdf, svg));
    }

    @ParameterizedTest
    @MethodSource("examples")
    void theGuideShowsTheDrawingAsItIs(String example) throws IOException {
        Path file = Devices.folder().resolveSibling("pictures").resolve("drawing-" + example + ".png");
        BufferedImage now = Painted.pdf(PdfDrawing.of(Devices.drawn(Devices.example(example)), Devices.LETTERS), GUIDE_DPI);
        if (Boolean.getBoolean("pictures.renew")) {
            ImageIO.write(now, "png", file.toFile());
        }
        BufferedImage shown = new BufferedImage(now.getWidth(), now.getHeight(), BufferedImage.TYPE_BYTE_GRAY);
        shown.createGraphics().drawImage(ImageIO.read(Files.newInputStream(file)), 0, 0, null);
        assertSame(now, shown);
    }
}
