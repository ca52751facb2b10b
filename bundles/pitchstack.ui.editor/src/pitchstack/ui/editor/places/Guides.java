// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.places;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntPredicate;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.units.Scale;

/**
 * What lies one above the other while something is dragged: ends of rows and marks of the axis on one side, what is
 * dragged on the other.
 *
 * @param scale the scale of the axis
 * @param fixed what stays
 * @param moved what is dragged
 */
public record Guides(Scale scale, List<Line> fixed, List<Line> moved) {
    private static final int MOST = 3;

    /**
     * A place across the drawing.
     *
     * @param place on the unrolled axis
     * @param words what is there
     */
    public record Line(double place, String words) { }

    /**
     * Two places that lie one above the other, or nearly.
     *
     * @param place where what stays is
     * @param exact whether both are the same as far as can be read
     * @param words what lies where
     */
    public record Match(double place, boolean exact, String words) { }

    /** Copies the lists. */
    public Guides {
        fixed = List.copyOf(fixed);
        moved = List.copyOf(moved);
    }

    /** The datum and the stops of an axis. */
    public static List<Line> marks(AxisSpec spec) {
        List<Line> lines = new ArrayList<>(List.of(new Line(spec.datum(), "the datum")));
        spec.low().ifPresent(low -> lines.add(new Line(low, "the low stop")));
        spec.high().ifPresent(high -> lines.add(new Line(high, "the high stop")));
        return lines;
    }

    /** Both ends of the rows on some bodies, the base being body 0. */
    public static List<Line> rows(AxisSpec spec, AxisPlaces places, IntPredicate bodies) {
        List<Line> lines = new ArrayList<>();
        for (int j = 0; j < places.stages().size(); j++) {
            String of = " of " + spec.stages().get(j).title(j);
            if (bodies.test(j)) {
                ends(lines, places.stages().get(j).base(), "the base row" + of);
            }
            if (bodies.test(j + 1)) {
                ends(lines, places.stages().get(j).rider(), "the rider row" + of);
            }
        }
        return lines;
    }

    private static void ends(List<Line> lines, RowPlace row, String words) {
        lines.add(new Line(row.left(), "the first tooth of " + words));
        lines.add(new Line(row.edge(row.teeth()), "the end of " + words));
    }

    /** The same with one more thing that is dragged; it is no longer among what stays. */
    public Guides with(double place, String words) {
        List<Line> all = new ArrayList<>(moved);
        all.add(new Line(place, words));
        return new Guides(scale, fixed.stream().filter(line -> !line.words().endsWith(words)).toList(), all);
    }

    /**
     * The nearest matches, the best first, at most three.
     *
     * @param tolerance how far apart two places may be that are shown as one above the other, counts
     */
    public List<Match> matches(double tolerance) {
        record Pair(Line stays, Line dragged) {
            double off() {
                return dragged.place() - stays.place();
            }
        }
        return fixed.stream().flatMap(stays -> moved.stream().map(dragged -> new Pair(stays, dragged)))
                .filter(pair -> Math.abs(pair.off()) <= tolerance)
                .sorted(Comparator.comparingDouble(pair -> Math.abs(pair.off()))).limit(MOST)
                .map(pair -> match(pair.stays(), pair.dragged(), pair.off())).toList();
    }

    private Match match(Line stays, Line dragged, double off) {
        String size = scale.formatSize(Math.round(Math.abs(off)));
        boolean exact = size.equals(scale.formatSize(0));
        return new Match(stays.place(), exact, dragged.words() + (exact ? " in line with "
                : " " + size + (off < 0 ? " left of " : " right of ")) + stays.words());
    }
}
