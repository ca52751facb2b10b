// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pitchstack.core.accuracy.rack.RackEdition;
import pitchstack.core.accuracy.rack.RackTolerance;

/**
 * A grade as people write it: {@code ISO 1328-1:2013 class 8}, {@code ISO 1328-1:1995 grade 8}.
 *
 * @param edition of the standard
 * @param number of the class or grade
 */
public record Grade(RackEdition edition, int number) {
    private static final Pattern TEXT = Pattern.compile(
            "\\s*(?:ISO\\s*)?1328(?:-1)?\\s*:\\s*(1995|2013)\\s*,?\\s*(?:class|grade)?\\s*(\\d{1,2})\\s*",
            Pattern.CASE_INSENSITIVE);
    /** How to write one. */
    static final String HINT = "write it like “ISO 1328-1:2013 class 8” or “ISO 1328-1:1995 grade 8”";

    /** Reads one; nothing where the text is none. */
    public static Optional<Grade> parse(String text) {
        Matcher m = TEXT.matcher(text);
        return m.matches() ? Optional.of(new Grade(
                m.group(1).equals("1995") ? RackEdition.ISO_1995 : RackEdition.ISO_2013, Integer.parseInt(m.group(2))))
                : Optional.empty();
    }

    /** What it allows a row; nothing outside the scope of the standard. */
    Optional<RackTolerance> tolerance(double lengthM, double pitchM) {
        return RackTolerance.of(edition, number, lengthM, pitchM / Math.PI);
    }

    @Override
    public String toString() {
        return edition == RackEdition.ISO_1995 ? "ISO 1328-1:1995 grade " + number : "ISO 1328-1:2013 class " + number;
    }
}
