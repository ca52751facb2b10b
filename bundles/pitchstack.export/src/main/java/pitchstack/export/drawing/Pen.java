// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.util.List;

/**
 * A kind of line: how wide, and of which dashes. Wide to narrow is 2 : 1, line group 0.5 of ISO 128; the frame is that of
 * ISO 5457. The lengths of dashes are multiples of the width, as ISO 128 has them (12, 3, 24 and half a width, from
 * memory), the dot being drawn a little longer so that printers keep it.
 */
public enum Pen {
    /** The frame of the drawing space. */
    FRAME(0.7, List.of()),
    /** Visible edges. */
    OUTLINE(0.5, List.of()),
    /** Lines of dimensions, of tables and of cuts. */
    THIN(0.25, List.of()),
    /** Hatching of a cut face, and the marks of the trimmed edge; narrow so that the outline stands out. */
    HATCH(0.18, List.of()),
    /** Edges that cannot be seen. */
    HIDDEN(0.25, List.of(3.0, 0.75)),
    /** Pitch lines, centre lines and the datum. */
    CHAIN(0.25, List.of(6.0, 0.75, 0.5, 0.75)),
    /** Where a part that moves can stand too. */
    PHANTOM(0.25, List.of(6.0, 0.75, 0.5, 0.75, 0.5, 0.75));

    private final double widthMm;
    private final List<Double> dashesMm;

    Pen(double widthMm, List<Double> dashesMm) {
        this.widthMm = widthMm;
        this.dashesMm = dashesMm;
    }

    /** How wide the line is. */
    public double widthMm() {
        return widthMm;
    }

    /** Dash, gap, dash, gap and so on; empty for a continuous line. */
    public List<Double> dashesMm() {
        return dashesMm;
    }
}
