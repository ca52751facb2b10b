// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.view.ViewBox;
import java.awt.Color;
import java.awt.Component;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Graphics2D;
import java.awt.GraphicsEnvironment;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** Pictures in shades of grey, and how they differ. */
public final class Painted {
    /** Edges are painted in shades of grey, by each painter in its own way; a dot may be as dark a little to the side. */
    private static final int REACH = 1;
    private static final int DARK = 90;
    private static final int LIGHT = 235;

    private Painted() {
    }

    /** A PDF by PDFBox. */
    public static BufferedImage pdf(byte[] bytes, float dotsPerInch) throws IOException {
        try (PDDocument document = Loader.loadPDF(bytes)) {
            return new PDFRenderer(document).renderImageWithDPI(0, dotsPerInch, ImageType.GRAY);
        }
    }

    /** An SVG by JSVG. */
    static BufferedImage svg(byte[] bytes, int width, int height) throws IOException, FontFormatException {
        try (InputStream font = LiberationSans.resource()) {
            GraphicsEnvironment.getLocalGraphicsEnvironment().registerFont(Font.createFont(Font.TRUETYPE_FONT, font));
        }
        SVGDocument document = new SVGLoader().load(new ByteArrayInputStream(bytes), null, LoaderContext.createDefault());
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, width, height);
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        document.render((Component) null, graphics, new ViewBox(0, 0, width, height));
        graphics.dispose();
        return image;
    }

    /** How many dots are dark. */
    public static int dark(BufferedImage image) {
        int dark = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                dark += grey(image, x, y) < DARK ? 1 : 0;
            }
        }
        return dark;
    }

    /** Dots that are dark in one picture and light all around in the other. */
    public static int missing(BufferedImage one, BufferedImage other) {
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
