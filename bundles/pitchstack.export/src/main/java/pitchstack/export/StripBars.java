// SPDX-License-Identifier: EPL-2.0
package pitchstack.export;

import java.util.List;
import java.util.Locale;
import pitchstack.core.coverage.Coverage;
import pitchstack.core.coverage.CoverageSummary;
import pitchstack.core.coverage.Reached;
import pitchstack.core.coverage.Stretch;
import pitchstack.core.units.Scale;
import pitchstack.core.units.TrueMinus;

/**
 * The bars of one strip. Stretches that are wide enough to be seen are drawn each by itself; a run of at least three
 * thinner ones is cut into columns of about half a millimetre, each of which stacks the shares of its stretches: clean at
 * full height, worn only at half height, and on top, pale, what is not reached.
 */
final class StripBars {
    private static final double THIN = 0.25;
    private static final double COLUMN = 0.5;
    /** Fewer thin stretches than this are still told apart by their wide neighbours. */
    private static final int LEAST_RUN = 3;
    private static final double FULL = 20;
    private static final String PALE = "#e2e2e2";

    private final String label;
    private final Scale scale;
    private final CoverageSummary summary;
    private final List<Stretch> stretches;

    /**
     * @param label what stands above the strip, or nothing
     * @param scale the scale of the axis
     * @param coverage what to draw
     */
    StripBars(String label, Scale scale, Coverage coverage) {
        this.label = label;
        this.scale = scale;
        this.summary = coverage.summary();
        this.stretches = coverage.stretches();
    }

    List<Stretch> stretches() {
        return stretches;
    }

    /** How much of the travel is reached in one way. */
    String share(Reached reached) {
        return Shares.of(summary, reached);
    }

    /** Where a position lies across the page. */
    double x(double position) {
        double low = stretches.get(0).low();
        return StripSvg.LEFT + StripSvg.WIDTH * (position - low) / (stretches.get(stretches.size() - 1).high() - low + 1);
    }

    /** Whether any column stands for several stretches. */
    boolean isMixed() {
        for (int i = 0; i < stretches.size(); i = Math.max(i + 1, thinUpTo(i))) {
            if (thinUpTo(i) - i >= LEAST_RUN) {
                return true;
            }
        }
        return false;
    }

    /** The first stretch from one on that is not thin. */
    private int thinUpTo(int from) {
        int i = from;
        while (i < stretches.size() && width(stretches.get(i).low(), stretches.get(i).high()) < THIN) {
            i++;
        }
        return i;
    }

    /** Up to the first count beyond, so that neighbours meet. */
    private double width(long low, long high) {
        return x((double) high + 1) - x(low);
    }

    /** Draws the strip on a floor. */
    void draw(SvgText svg, double floor) {
        svg.line("<g class=\"travel\">");
        if (!label.isEmpty()) {
            svg.line("<text x=\"%s\" y=\"%s\">%s</text>", StripSvg.LEFT, floor - FULL - 2, label);
        }
        int i = 0;
        while (i < stretches.size()) {
            int end = thinUpTo(i);
            if (end - i >= LEAST_RUN) {
                drawColumns(svg, floor, i, end);
                i = end;
            } else {
                draw(svg, floor, stretches.get(i++));
            }
        }
        svg.line("</g>");
    }

    private void draw(SvgText svg, double floor, Stretch stretch) {
        Reached reached = stretch.reached();
        svg.line("<rect class=\"%s\" x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" fill=\"%s\"><title>%s</title></rect>",
                reached.name().toLowerCase(Locale.ROOT), x(stretch.low()), floor - height(reached),
                width(stretch.low(), stretch.high()), height(reached), fill(reached),
                ReachedWords.of(reached) + ": " + range(stretch.low(), stretch.high()));
    }

    private String range(long low, long high) {
        return TrueMinus.in(scale.format(low) + " to " + scale.format(high));
    }

    /** Cuts the stretches from one up to but not including another into columns of equal width. */
    private void drawColumns(SvgText svg, double floor, int from, int end) {
        long low = stretches.get(from).low();
        long high = stretches.get(end - 1).high();
        int columns = Math.max(1, (int) (width(low, high) / COLUMN));
        int i = from;
        long first = low;
        for (int column = 1; column <= columns; column++) {
            long last = column == columns ? high : low + (long) ((high - low) * ((double) column / columns));
            long[] counts = new long[Reached.values().length];
            while (stretches.get(i).high() < last) {
                add(counts, stretches.get(i++), first, last);
            }
            add(counts, stretches.get(i), first, last);
            drawColumn(svg, floor, first, last, counts);
            first = last + 1;
        }
    }

    private static void add(long[] counts, Stretch stretch, long first, long last) {
        // On a rotary axis the travel may have a hole, in which a column has nothing.
        long inside = Math.min(last, stretch.high()) - Math.max(first, stretch.low()) + 1;
        counts[stretch.reached().ordinal()] += Math.max(0, inside);
    }

    private void drawColumn(SvgText svg, double floor, long first, long last, long[] counts) {
        long all = last - first + 1;
        // Smooth edges would leave pale seams between columns.
        svg.line("<g class=\"mixed\" shape-rendering=\"crispEdges\"><title>%s</title>", range(first, last) + ": "
                + ReachedWords.of(Reached.CLEAN) + " " + Shares.of(counts[0], all) + ", "
                + ReachedWords.of(Reached.WORN) + " " + Shares.of(counts[1], all) + ", "
                + ReachedWords.of(Reached.NOT) + " " + Shares.of(counts[2], all));
        double top = floor;
        for (Reached reached : Reached.values()) {
            double high = (reached == Reached.WORN ? height(reached) : FULL) * counts[reached.ordinal()] / all;
            if (high > 0) {
                top -= high;
                svg.line("<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" fill=\"%s\"/>", x(first), top,
                        width(first, last), high, reached == Reached.NOT ? PALE : fill(reached));
            }
        }
        svg.line("</g>");
    }

    static double height(Reached reached) {
        return switch (reached) {
            case CLEAN -> FULL;
            case WORN -> FULL / 2;
            case NOT -> FULL / 5;
        };
    }

    static String fill(Reached reached) {
        return switch (reached) {
            case CLEAN -> "#7f7f7f";
            case WORN -> "url(#hatch)";
            case NOT -> "url(#cross)";
        };
    }
}
