// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** The kinds of file that a drawing can be written to. */
public enum DrawingFormat {
    /** For paper. */
    PDF,
    /** For the screen and for documents. */
    SVG,
    /** For drawing programs: Release 12. */
    DXF;

    /** What the name of such a file ends with, without the point. */
    public String ending() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** All endings. */
    public static List<String> endings() {
        return Arrays.stream(values()).map(DrawingFormat::ending).toList();
    }

    /** The format with an ending, which must be one of {@link #endings()}. */
    public static DrawingFormat of(String ending) {
        return valueOf(ending.toUpperCase(Locale.ROOT));
    }

    /** The whole file, the same for the same drawing on every run. */
    public byte[] bytes(Drawing drawing, LiberationSans letters) {
        return switch (this) {
            case PDF -> PdfDrawing.of(drawing, letters);
            case SVG -> SvgDrawing.of(drawing, letters).getBytes(StandardCharsets.UTF_8);
            case DXF -> DxfDrawing.of(drawing, letters).getBytes(StandardCharsets.US_ASCII);
        };
    }
}
