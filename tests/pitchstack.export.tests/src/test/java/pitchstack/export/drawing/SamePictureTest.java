// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.view.ViewBox;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.GraphicsEnvironment;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.InputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** PDF and SVG painted by two libraries that know nothing of each other, PDFBox and JSVG, and compared dot by dot. */
class SamePictureTest {
    private static final float DPI = 100;
    /** Both paint edges in shades of grey, each in its own way; a dot may be as dark a little to the side. */
    private static final int REACH = 1;
    private static final int DARK = 90;
    private static final int LIGHT = 235;

    @BeforeAll
    static void lettersAreAtHand() throws Exception {
        try (InputStream font = LiberationSans.resource()) {
            GraphicsEnvironment.getLocalGraphicsEnvironment().registerFont(Font.createFont(Font.TRUETYPE_FONT, font));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"cross-cut-fence", "index-table"})
    void pdfAndSvgShowTheSame(String example) throws Exception {
        Drawing drawing = Devices.drawn(Devices.example(example));
        BufferedImage pdf = pdf(PdfDrawing.of(drawing, Devices.LETTERS));
        BufferedImage svg = svg(DrawingFormat.SVG.bytes(drawing, Devices.LETTERS), pdf.getWidth(), pdf.getHeight());
        int dark = dark(pdf);
        assertTrue(dark > 10_000, "Hardly anything is drawn: " + dark);
        // One dot in a thousand of what is drawn: the ends of dashes and the finest letters.
        assertEquals(0, missing(pdf, svg), dark / 1000.0, "dots of the PDF that the SVG lacks");
        assertEquals(0, missing(svg, pdf), dark / 1000.0, "dots of the SVG that the PDF lacks");
    }

    private static BufferedImage pdf(byte[] bytes) throws Exception {
        try (PDDocument document = Loader.loadPDF(bytes)) {
            return new PDFRenderer(document).renderImageWithDPI(0, DPI, ImageType.GRAY);
        }
    }

    private static BufferedImage svg(byte[] bytes, int width, int height) {
        SVGDocument document = new SVGLoader().load(new ByteArrayInputStream(bytes), null, LoaderContext.createDefault());
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, width, height);
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        document.render((java.awt.Component) null, graphics, new ViewBox(0, 0, width, height));
        graphics.dispose();
        return image;
    }

    private static int dark(BufferedImage image) {
        int dark = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                dark += grey(image, x, y) < DARK ? 1 : 0;
            }
        }
        return dark;
    }

    /** Dots that are dark in one picture and light all around in the other. */
    private static int missing(BufferedImage one, BufferedImage other) {
        int missing = 0;
        for (int y = REACH; y < one.getHeight() - REACH; y++) {
            for (int x = REACH; x < one.getWidth() - REACH; x++) {
                missing += grey(one, x, y) < DARK && isLightAround(other, x, y) ? 1 : 0;
            }
        }
        return missing;
    }

    private static boolean isLightAround(BufferedImage image, int x, int y) {
        for (int dy = -REACH; dy <= REACH; dy++) {
            for (int dx = -REACH; dx <= REACH; dx++) {
                if (grey(image, x + dx, y + dy) < LIGHT) {
                    return false;
                }
            }
        }
        return true;
    }

    private static int grey(BufferedImage image, int x, int y) {
        return image.getRaster().getSample(x, y, 0);
    }
}
