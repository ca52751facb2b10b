// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.util.Matrix;

/**
 * Writes drawings as a PDF, each on a page of its own, with the letters that it uses in the file and its date as the only
 * time in it.
 */
public final class PdfDrawing {
    private static final float POINTS_PER_MM = 72 / 25.4f;
    /** How far the handles of a quarter of a circle stand off its ends, in radii: 4/3 tan(90°/4). */
    private static final double HANDLE = 4.0 / 3;
    private static final double QUARTER = 90;

    private final Drawing drawing;
    private final LiberationSans letters;
    private final PDPageContentStream page;
    private final PDFont font;

    private PdfDrawing(Drawing drawing, LiberationSans letters, PDPageContentStream page, PDFont font) {
        this.drawing = drawing;
        this.letters = letters;
        this.page = page;
        this.font = font;
    }

    /** The bytes of the file of one drawing. */
    public static byte[] of(Drawing drawing, LiberationSans letters) {
        return of(List.of(drawing), letters);
    }

    /**
     * The bytes of the file of several drawings; the first gives it its title, creator and date.
     *
     * @param drawings at least one
     */
    public static byte[] of(List<Drawing> drawings, LiberationSans letters) {
        try (PDDocument document = new PDDocument()) {
            describe(document, drawings.get(0));
            PDFont font = letters.embeddedIn(document);
            for (Drawing drawing : drawings) {
                PDPage page = new PDPage(new PDRectangle((float) drawing.sheet().widthMm() * POINTS_PER_MM,
                        (float) drawing.sheet().heightMm() * POINTS_PER_MM));
                document.addPage(page);
                try (PDPageContentStream stream = new PDPageContentStream(document, page)) {
                    new PdfDrawing(drawing, letters, stream, font).write();
                }
            }
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException("Memory cannot fail to be written to", e);
        }
    }

    private static void describe(PDDocument document, Drawing drawing) {
        PDDocumentInformation facts = document.getDocumentInformation();
        facts.setTitle(drawing.title());
        if (!drawing.creator().isBlank()) {
            facts.setAuthor(drawing.creator());
        }
        facts.setCreator("Pitchstack");
        facts.setCreationDate(midnight(drawing.date()));
        // The identity of the file is made from this number and the facts above, instead of from the clock.
        document.setDocumentId(drawing.date().toEpochDay());
    }

    private static GregorianCalendar midnight(LocalDate date) {
        return GregorianCalendar.from(date.atStartOfDay(ZoneOffset.UTC));
    }

    private void write() throws IOException {
        page.transform(Matrix.getScaleInstance(POINTS_PER_MM, POINTS_PER_MM));
        for (Mark mark : drawing.marks()) {
            mark(mark);
        }
    }

    private void mark(Mark mark) throws IOException {
        if (mark instanceof Mark.Line line) {
            stroke(line.pen(), List.of(line.from(), line.to()), false);
        } else if (mark instanceof Mark.Path path) {
            stroke(path.pen(), path.points(), path.closed());
        } else if (mark instanceof Mark.Area area) {
            trace(area.corners());
            page.fill();
        } else if (mark instanceof Mark.Circle circle) {
            arc(new Mark.Arc(circle.pen(), circle.centre(), circle.radius(), 0, 360), true);
        } else if (mark instanceof Mark.Arc arc) {
            arc(arc, false);
        } else {
            text((Mark.Text) mark);
        }
    }

    private void stroke(Pen pen, List<Point> points, boolean closed) throws IOException {
        take(pen);
        trace(points);
        if (closed) {
            page.closeAndStroke();
        } else {
            page.stroke();
        }
    }

    private void trace(List<Point> points) throws IOException {
        page.moveTo((float) points.get(0).x(), (float) points.get(0).y());
        for (Point point : points.subList(1, points.size())) {
            page.lineTo((float) point.x(), (float) point.y());
        }
    }

    private void take(Pen pen) throws IOException {
        page.setLineWidth((float) pen.widthMm());
        float[] dashes = new float[pen.dashesMm().size()];
        for (int i = 0; i < dashes.length; i++) {
            dashes[i] = pen.dashesMm().get(i).floatValue();
        }
        page.setLineDashPattern(dashes, 0);
    }

    /** In pieces of at most a quarter, each a cubic curve that stays within 0.03 % of the radius. */
    private void arc(Mark.Arc arc, boolean closed) throws IOException {
        take(arc.pen());
        int pieces = (int) Math.ceil((arc.toDeg() - arc.fromDeg()) / QUARTER);
        double piece = (arc.toDeg() - arc.fromDeg()) / pieces;
        Point start = Extents.on(arc, arc.fromDeg());
        page.moveTo((float) start.x(), (float) start.y());
        for (int i = 0; i < pieces; i++) {
            curve(arc, arc.fromDeg() + i * piece, piece);
        }
        if (closed) {
            page.closeAndStroke();
        } else {
            page.stroke();
        }
    }

    private void curve(Mark.Arc arc, double fromDeg, double byDeg) throws IOException {
        double handle = HANDLE * Math.tan(Math.toRadians(byDeg) / 4) * arc.radius();
        Point from = Extents.on(arc, fromDeg);
        Point to = Extents.on(arc, fromDeg + byDeg);
        double begins = Math.toRadians(fromDeg);
        double ends = Math.toRadians(fromDeg + byDeg);
        page.curveTo((float) (from.x() - handle * Math.sin(begins)), (float) (from.y() + handle * Math.cos(begins)),
                (float) (to.x() + handle * Math.sin(ends)), (float) (to.y() - handle * Math.cos(ends)),
                (float) to.x(), (float) to.y());
    }

    private void text(Mark.Text text) throws IOException {
        double before = letters.widthMm(text.text(), text.heightMm()) * text.anchor().share();
        Point start = text.upwards() ? text.at().moved(0, -before) : text.at().moved(-before, 0);
        page.beginText();
        page.setFont(font, (float) letters.em(text.heightMm()));
        page.setTextMatrix(text.upwards() ? new Matrix(0, 1, -1, 0, (float) start.x(), (float) start.y())
                : Matrix.getTranslateInstance((float) start.x(), (float) start.y()));
        page.showText(text.text());
        page.endText();
    }
}
