// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import pitchstack.export.dxf.ReadDxf;

/** The three files of a drawing, read back by others than those who wrote them. */
class DrawingFilesTest {
    static Stream<String> examples() {
        return Devices.EXAMPLES.stream();
    }

    @ParameterizedTest
    @EnumSource(DrawingFormat.class)
    void theSameDrawingGivesTheSameBytesEveryTime(DrawingFormat format) throws IOException {
        byte[] once = format.bytes(Devices.drawn(Devices.example("cross-cut-fence")), Devices.LETTERS);
        byte[] again = format.bytes(Devices.drawn(Devices.example("cross-cut-fence")), new LiberationSans());
        assertArrayEquals(once, again);
    }

    @ParameterizedTest
    @MethodSource("examples")
    void pdfHoldsTheTextsOfTheDrawing(String example) throws IOException {
        Drawing drawing = Devices.drawn(Devices.example(example));
        assertEquals(Devices.texts(drawing), PdfReading.of(PdfDrawing.of(drawing, Devices.LETTERS)).texts());
    }

    @ParameterizedTest
    @MethodSource("examples")
    void svgHoldsTheTextsOfTheDrawing(String example) throws Exception {
        Drawing drawing = Devices.drawn(Devices.example(example));
        NodeList texts = svg(drawing).getElementsByTagName("text");
        assertEquals(Devices.texts(drawing),
                IntStream.range(0, texts.getLength()).mapToObj(i -> texts.item(i).getTextContent()).toList());
    }

    @ParameterizedTest
    @MethodSource("examples")
    void dxfHoldsEveryMarkAsAnEntityOfReleaseTwelve(String example) throws IOException {
        Drawing drawing = Devices.drawn(Devices.example(example));
        ReadDxf dxf = new ReadDxf(DxfDrawing.of(drawing, Devices.LETTERS));
        List<String> kinds = dxf.entities("ENTITIES").stream().map(ReadDxf.Entity::kind)
                .filter(kind -> !kind.equals("VERTEX") && !kind.equals("SEQEND")).toList();
        assertEquals(drawing.marks().stream().map(DrawingFilesTest::kind).toList(), kinds);
    }

    private static String kind(Mark mark) {
        return mark instanceof Mark.Line ? "LINE" : mark instanceof Mark.Path ? "POLYLINE" : mark instanceof Mark.Area ? "SOLID"
                : mark instanceof Mark.Circle ? "CIRCLE" : mark instanceof Mark.Arc ? "ARC" : "TEXT";
    }

    @Test
    void pdfHasNoTimeButTheDateOfTheDrawing() throws IOException {
        byte[] pdf = PdfDrawing.of(Devices.drawn(Devices.example("ram-shim")), Devices.LETTERS);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertEquals(Devices.DATE, java.time.LocalDate.ofInstant(
                    document.getDocumentInformation().getCreationDate().toInstant(), java.time.ZoneOffset.UTC));
            assertEquals("Ram shim, fixture drawing", document.getDocumentInformation().getTitle());
            assertEquals(1, document.getNumberOfPages());
            // A3 lies: 420 mm are 1190.55 points.
            assertEquals(420 * 72 / 25.4, document.getPage(0).getMediaBox().getWidth(), 0.01);
        }
        assertFalse(new String(pdf, StandardCharsets.ISO_8859_1).contains("ModDate"));
    }

    /** Measured over the black fields, the first and the last of five. */
    @Test
    void checkBarMeasuresAHundredMillimetresInThePdf() throws IOException {
        Drawing drawing = Devices.drawn(Devices.example("cross-cut-fence"));
        List<Rectangle2D> fields = PdfReading.of(PdfDrawing.of(drawing, Devices.LETTERS)).areasMm().stream()
                .filter(box -> Math.abs(box.getWidth() - 20) < 0.01 && Math.abs(box.getHeight() - 2.5) < 0.01).toList();
        assertEquals(3, fields.size());
        assertEquals(100, fields.get(2).getMaxX() - fields.get(0).getX(), 0.001);
    }

    @Test
    void checkBarMeasuresAHundredMillimetresInTheSvg() throws Exception {
        Document svg = svg(Devices.drawn(Devices.example("cross-cut-fence")));
        Element root = svg.getDocumentElement();
        // Millimetres of paper in a unit of the drawing.
        double unit = Double.parseDouble(root.getAttribute("width").replace("mm", ""))
                / Double.parseDouble(root.getAttribute("viewBox").split(" ")[2]);
        NodeList groups = root.getElementsByTagName("g");
        Element bar = IntStream.range(0, groups.getLength()).mapToObj(i -> (Element) groups.item(i))
                .filter(group -> group.getAttribute("id").equals("check-bar")).findFirst().orElseThrow();
        NodeList paths = bar.getElementsByTagName("path");
        List<Double> xs = new ArrayList<>();
        for (int i = 0; i < paths.getLength(); i++) {
            Element path = (Element) paths.item(i);
            double half = path.getAttribute("stroke").equals("none") ? 0 : Double.parseDouble(path.getAttribute("stroke-width")) / 2;
            List<Double> of = Arrays.stream(path.getAttribute("d").replaceAll("[MLZ]", ";").split(";")).filter(p -> !p.isBlank())
                    .map(p -> Double.parseDouble(p.strip().split(" ")[0])).sorted().toList();
            xs.addAll(List.of(of.get(0) - half, of.get(of.size() - 1) + half));
        }
        assertEquals(100, unit * (xs.stream().max(Double::compare).get() - xs.stream().min(Double::compare).get()), 0.001);
    }

    @Test
    void checkBarMeasuresAHundredMillimetresInTheDxf() throws IOException {
        ReadDxf dxf = new ReadDxf(DxfDrawing.of(Devices.drawn(Devices.example("cross-cut-fence")), Devices.LETTERS));
        assertTrue(dxf.comments().contains("All lengths are millimetres"));
        double[] xs = dxf.entities("ENTITIES").stream().filter(entity -> entity.kind().equals("SOLID"))
                .filter(entity -> entity.text(8).equals("CHECK_BAR"))
                .flatMapToDouble(entity -> IntStream.of(10, 11, 12, 13).mapToDouble(entity::number)).sorted().toArray();
        assertEquals(12, xs.length);
        assertEquals(100, xs[xs.length - 1] - xs[0], 1e-9);
    }

    private static Document svg(Drawing drawing) throws Exception {
        byte[] bytes = DrawingFormat.SVG.bytes(drawing, Devices.LETTERS);
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new ByteArrayInputStream(bytes));
    }
}
