// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.dxf;

import java.util.Arrays;
import java.util.List;

/** How the lines of a layer are drawn. Names as drawing programs know them; lengths of dashes common practice, no source. */
public enum LineType {
    /** Visible outlines. */
    CONTINUOUS("Solid line"),
    /** Hidden outlines: dash, gap. */
    DASHED("__ __ __", 3, -1.5),
    /** Centre and pitch lines: long dash, gap, dot, gap. */
    CENTER("____ . ____", 12, -1.5, 0.5, -1.5),
    /** Parts drawn for reference: long dash, gap, two dots. */
    PHANTOM("____ . . ____", 12, -1.5, 0.5, -1.5, 0.5, -1.5);

    private final String looks;
    private final double[] dashesMm;

    LineType(String looks, double... dashesMm) {
        this.looks = looks;
        this.dashesMm = dashesMm;
    }

    /** How it looks, in characters. */
    String looks() {
        return looks;
    }

    /** Millimetres drawn, or below 0 left out; none where the line is solid. */
    List<Double> dashesMm() {
        return Arrays.stream(dashesMm).boxed().toList();
    }
}
