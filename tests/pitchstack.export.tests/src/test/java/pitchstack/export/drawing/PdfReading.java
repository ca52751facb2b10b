// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.awt.geom.GeneralPath;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/** What a PDF holds, in the order in which it is painted: texts as its own table of letters has them, and filled areas. */
final class PdfReading extends PDFGraphicsStreamEngine {
    private static final double MM_PER_POINT = 25.4 / 72;

    private final List<String> texts = new ArrayList<>();
    private final List<Rectangle2D> areasMm = new ArrayList<>();
    private final GeneralPath path = new GeneralPath();
    private StringBuilder text = new StringBuilder();

    private PdfReading(PDPage page) {
        super(page);
    }

    static PdfReading of(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PdfReading reading = new PdfReading(document.getPage(0));
            reading.processPage(document.getPage(0));
            return reading;
        }
    }

    List<String> texts() {
        return texts;
    }

    /** The boxes of the filled areas, in millimetres. */
    List<Rectangle2D> areasMm() {
        return areasMm;
    }

    @Override
    protected void showText(byte[] string) throws IOException {
        text = new StringBuilder();
        super.showText(string);
        texts.add(text.toString());
    }

    @Override
    protected void showGlyph(Matrix matrix, PDFont font, int code, Vector displacement) throws IOException {
        text.append(font.toUnicode(code));
        super.showGlyph(matrix, font, code, displacement);
    }

    @Override
    public void fillPath(int windingRule) {
        Rectangle2D box = path.getBounds2D();
        areasMm.add(new Rectangle2D.Double(box.getX() * MM_PER_POINT, box.getY() * MM_PER_POINT,
                box.getWidth() * MM_PER_POINT, box.getHeight() * MM_PER_POINT));
        path.reset();
    }

    @Override
    public void moveTo(float x, float y) {
        path.moveTo(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
        path.lineTo(x, y);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        path.curveTo(x1, y1, x2, y2, x3, y3);
    }

    @Override
    public Point2D getCurrentPoint() {
        return path.getCurrentPoint();
    }

    @Override
    public void closePath() {
        path.closePath();
    }

    @Override
    public void endPath() {
        path.reset();
    }

    @Override
    public void strokePath() {
        path.reset();
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
        fillPath(windingRule);
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        throw new IllegalStateException("Drawings have no rectangles");
    }

    @Override
    public void drawImage(PDImage image) {
        throw new IllegalStateException("Drawings have no images");
    }

    @Override
    public void clip(int windingRule) {
        throw new IllegalStateException("Drawings are not clipped");
    }

    @Override
    public void shadingFill(COSName shading) {
        throw new IllegalStateException("Drawings are not shaded");
    }
}
