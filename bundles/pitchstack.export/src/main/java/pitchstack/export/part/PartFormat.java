// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.part;

import java.util.Locale;

/** The formats of files for parts. */
public enum PartFormat {
    /** For printers: names, units and double precision. */
    THREE_MF("3mf"),
    /** For programs that know nothing better. */
    STL("stl"),
    /** The side view, for mills and drawing programs. */
    DXF("dxf");

    private final String ending;

    PartFormat(String ending) {
        this.ending = ending;
    }

    /** What the name of a file ends with, without the point. */
    public String ending() {
        return ending;
    }

    /**
     * The format of a file.
     *
     * @param ending what its name ends with, in any case
     * @throws IllegalArgumentException if it is none of the formats
     */
    public static PartFormat of(String ending) {
        for (PartFormat format : values()) {
            if (format.ending.equals(ending.toLowerCase(Locale.ROOT))) {
                return format;
            }
        }
        throw new IllegalArgumentException("No format of parts ends with ." + ending);
    }
}
