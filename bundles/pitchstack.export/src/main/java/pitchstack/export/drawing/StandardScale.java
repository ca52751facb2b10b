// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A scale of ISO 5455: 1, 2 or 5 times a power of ten, either way.
 *
 * @param paper millimetres on paper
 * @param real of the part; one of the two is 1
 */
public record StandardScale(int paper, int real) {
    /** All scales that a drawing here may have, the largest first. */
    public static final List<StandardScale> ALL = List.of(of(50, 1), of(20, 1), of(10, 1), of(5, 1), of(2, 1), of(1, 1),
            of(1, 2), of(1, 5), of(1, 10), of(1, 20), of(1, 50), of(1, 100), of(1, 200), of(1, 500), of(1, 1000),
            of(1, 2000), of(1, 5000), of(1, 10000));

    private static final Pattern TEXT = Pattern.compile("\\s*(\\d{1,5})\\s*:\\s*(\\d{1,5})\\s*");

    private static StandardScale of(int paper, int real) {
        return new StandardScale(paper, real);
    }

    /** Reads a scale such as 1:2; empty where it is none of the standard's. */
    public static Optional<StandardScale> parse(String text) {
        Matcher m = TEXT.matcher(text);
        return m.matches() ? Optional.of(of(Integer.parseInt(m.group(1)), Integer.parseInt(m.group(2)))).filter(ALL::contains)
                : Optional.empty();
    }

    /** Paper per part, as a factor. */
    public double factor() {
        return (double) paper / real;
    }

    /** The largest scale at which a length of the part takes no more than a length of paper, if there is one. */
    static Optional<StandardScale> fitting(double lengthMm, double paperMm) {
        return ALL.stream().filter(scale -> lengthMm * scale.factor() <= paperMm).findFirst();
    }

    @Override
    public String toString() {
        return paper + ":" + real;
    }
}
