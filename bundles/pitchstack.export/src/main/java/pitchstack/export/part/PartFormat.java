// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.part;

import java.util.Arrays;
import java.util.List;
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

    /** All endings. */
    public static List<String> endings() {
        return Arrays.stream(values()).map(PartFormat::ending).toList();
    }

    /**
     * The format of a file.
     *
     * @param ending one of {@link #endings()}, in any case
     */
    public static PartFormat of(String ending) {
        return values()[endings().indexOf(ending.toLowerCase(Locale.ROOT))];
    }
}
