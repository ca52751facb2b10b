// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The letters of every drawing: Liberation Sans (SIL Open Font License 1.1), which PDFBox brings along. Arial and
 * Helvetica have letters of the same widths, so that an SVG or DXF file shown with those comes out the same.
 */
public final class LiberationSans implements TextMeasure {
    /** How a program that shows SVG is asked for it. */
    public static final String FAMILIES = "Liberation Sans, Arial, Helvetica, sans-serif";

    private static final String RESOURCE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    private static final char NO_LETTER = '?';

    private final TrueTypeFont font;
    private final CmapLookup letters;
    private final double unitsPerEm;
    private final double capitalUnits;

    /** Reads the font. */
    public LiberationSans() {
        try (InputStream data = resource()) {
            font = new TTFParser().parse(new RandomAccessReadBuffer(data));
            letters = font.getUnicodeCmapLookup();
            unitsPerEm = font.getUnitsPerEm();
            capitalUnits = font.getOS2Windows().getCapHeight();
        } catch (IOException e) {
            throw new UncheckedIOException("The font that PDFBox brings along cannot be read", e);
        }
    }

    /** The file of the font. */
    static InputStream resource() {
        return PDDocument.class.getResourceAsStream(RESOURCE);
    }

    /** The font for a PDF, of which the file will hold the letters that are used. */
    PDFont embeddedIn(PDDocument document) throws IOException {
        return PDType0Font.load(document, font, true);
    }

    /** The size of an em for capital letters of a height, both in the same unit. */
    public double em(double capitalHeight) {
        return capitalHeight * unitsPerEm / capitalUnits;
    }

    @Override
    public double widthMm(String text, double heightMm) {
        return text.codePoints().mapToLong(this::advance).sum() * heightMm / capitalUnits;
    }

    private long advance(int letter) {
        try {
            return font.getAdvanceWidth(letters.getGlyphId(letter));
        } catch (IOException e) {
            throw new UncheckedIOException("The widths of the font that PDFBox brings along cannot be read", e);
        }
    }

    @Override
    public String printable(String text) {
        StringBuilder printable = new StringBuilder(text.length());
        text.codePoints().forEach(c -> printable.appendCodePoint(Character.isWhitespace(c) ? ' '
                : letters.getGlyphId(c) == 0 ? NO_LETTER : c));
        return printable.toString().strip();
    }
}
