// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import pitchstack.export.plot.Picture;

/** A drawing as it will look on paper, for the screen. */
public final class DrawingPreview {
    private static final float POINTS_PER_MM = 72 / 25.4f;

    private DrawingPreview() {
    }

    /**
     * The picture.
     *
     * @param widthPx how wide the sheet is to be, above 0
     */
    public static Picture of(Drawing drawing, LiberationSans letters, int widthPx) {
        float scale = (float) (widthPx / (drawing.sheet().widthMm() * POINTS_PER_MM));
        try (PDDocument document = Loader.loadPDF(PdfDrawing.of(drawing, letters))) {
            BufferedImage image = new PDFRenderer(document).renderImage(0, scale, ImageType.RGB);
            int[] rgb = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
            for (int i = 0; i < rgb.length; i++) {
                rgb[i] &= 0xffffff;
            }
            return new Picture(image.getWidth(), image.getHeight(), rgb);
        } catch (IOException e) {
            throw new UncheckedIOException("Memory cannot fail to be read", e);
        }
    }
}
