// SPDX-License-Identifier: EPL-2.0
package pitchstack.benchmarks;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.apache.batik.dom.GenericDOMImplementation;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.export.drawing.Drawing;
import pitchstack.export.drawing.DrawingAnswer.Drawn;
import pitchstack.export.drawing.DrawingRequest;
import pitchstack.export.drawing.DxfDrawing;
import pitchstack.export.drawing.FixtureDrawing;
import pitchstack.export.drawing.LiberationSans;
import pitchstack.export.drawing.PdfDrawing;
import pitchstack.export.drawing.SvgDrawing;
import pitchstack.model.Positioner;
import pitchstack.model.file.StackFile;

/**
 * The fixture drawing of six stages, composed and written; and the same marks written by libraries that turn painting into
 * files.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class Sheets {
    private static final float POINTS_PER_MM = 72 / 25.4f;

    /** Teeth of the rack. */
    @Param({"100", "100000"})
    public int problem;

    private LiberationSans letters;
    private DrawingRequest request;
    private Drawing drawing;

    /** Reads the stack. */
    @Setup
    public void read() throws IOException {
        letters = new LiberationSans();
        Positioner positioner = stack(problem);
        List<AxisAnalysis> axes = List.of(AxisAnalysis.of(positioner, positioner.getAxes().get(0)));
        request = DrawingRequest.usual(positioner, axes, LocalDate.EPOCH);
        drawing = compose();
    }

    private static Positioner stack(int teeth) throws IOException {
        StringBuilder text = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<ps:Positioner xmi:version=\"2.0\""
                + " xmlns:xmi=\"http://www.omg.org/XMI\" xmlns:ps=\"pitchstack:model/1\"><axes name=\"Slide\">");
        for (int j = 0; j < 6; j++) {
            text.append("<stages name=\"Stage\" pitch=\"").append(5 - 0.01 * j).append(" mm\"><baseRow teeth=\"")
                    .append(j == 0 ? teeth : 40).append("\"/><riderRow teeth=\"30\"/></stages>");
        }
        Path file = Files.createTempFile("six", "." + StackFile.EXTENSION);
        try {
            Files.writeString(file, text.append("</axes></ps:Positioner>"));
            return StackFile.load(file).positioner();
        } finally {
            Files.delete(file);
        }
    }

    /** Laying out the sheet. */
    @Benchmark
    public Drawing compose() {
        return ((Drawn) FixtureDrawing.of(request, letters)).drawing();
    }

    /** Writing it as PDF. */
    @Benchmark
    public byte[] pdf() {
        return PdfDrawing.of(drawing, letters);
    }

    /** Writing it as SVG. */
    @Benchmark
    public String svg() {
        return SvgDrawing.of(drawing, letters);
    }

    /** Writing it as DXF. */
    @Benchmark
    public String dxf() {
        return DxfDrawing.of(drawing, letters);
    }

    /** The same marks through the bridge from Java's painting to PDFBox, letters as outlines. */
    @Benchmark
    public byte[] rivalPdf() throws IOException {
        float width = (float) drawing.sheet().widthMm() * POINTS_PER_MM;
        float height = (float) drawing.sheet().heightMm() * POINTS_PER_MM;
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage(new PDRectangle(width, height));
            document.addPage(page);
            PdfBoxGraphics2D graphics = new PdfBoxGraphics2D(document, width, height);
            graphics.scale(POINTS_PER_MM, POINTS_PER_MM);
            new SheetPainter(drawing, letters).paint(graphics);
            graphics.dispose();
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                content.drawForm(graphics.getXFormObject());
            }
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            return bytes.toByteArray();
        }
    }

    /** The same marks through Batik's SVGGraphics2D. */
    @Benchmark
    public String rivalSvg() throws IOException {
        SVGGraphics2D graphics = new SVGGraphics2D(GenericDOMImplementation.getDOMImplementation()
                .createDocument("http://www.w3.org/2000/svg", "svg", null));
        new SheetPainter(drawing, letters).paint(graphics);
        StringWriter text = new StringWriter();
        graphics.stream(text, false);
        return text.toString();
    }
}
