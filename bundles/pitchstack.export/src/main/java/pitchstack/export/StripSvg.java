// SPDX-License-Identifier: EPL-2.0
package pitchstack.export;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pitchstack.core.coverage.Coverage;
import pitchstack.core.coverage.CoverageSummary;
import pitchstack.core.coverage.Reached;
import pitchstack.core.coverage.Stretch;
import pitchstack.core.units.Scale;

/**
 * The travel as a strip, a drawing in millimetres that fits across A4. Clean stretches are the highest and plain, those
 * reached only over worn teeth are half as high and hatched one way, those not reached are low and hatched both ways;
 * the legend says so in words, and so does each stretch where a viewer shows titles. The widths are true to scale, the
 * thinnest included, so that a stretch too thin to print is in the file all the same.
 */
public final class StripSvg {
    /** The most stretches drawn: with more, each is thinner than 0.01 mm, and the file is larger than 5 MB. */
    public static final int MOST_STRETCHES = 40_000;

    private static final double PAGE = 297;
    private static final double HEIGHT = 62;
    private static final double LEFT = 20;
    /** From the lowest to the highest position. */
    static final double WIDTH = 257;
    private static final double FLOOR = 38;
    private static final double LEGEND = 55;
    private static final double LEGEND_STEP = 70;

    private final String title;
    private final Scale scale;
    private final Coverage coverage;
    private final StringBuilder svg = new StringBuilder();

    private StripSvg(String title, Scale scale, Coverage coverage) {
        this.title = title;
        this.scale = scale;
        this.coverage = coverage;
    }

    /**
     * The drawing.
     *
     * @param title what stands above it
     * @param scale the scale of the axis
     * @param coverage what to draw
     * @return the text of an SVG file; empty where there is no travel, or more than {@link #MOST_STRETCHES} stretches
     */
    public static Optional<String> of(String title, Scale scale, Coverage coverage) {
        int stretches = coverage.stretches().size();
        return stretches == 0 || stretches > MOST_STRETCHES ? Optional.empty()
                : Optional.of(new StripSvg(title, scale, coverage).draw());
    }

    private String draw() {
        String escaped = XmlText.of(title);
        line("<?xml version=\"1.0\" encoding=\"UTF-8\"?>");
        line("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%smm\" height=\"%smm\" viewBox=\"0 0 %s %s\""
                + " font-family=\"sans-serif\" font-size=\"3.5\">", mm(PAGE), mm(HEIGHT), mm(PAGE), mm(HEIGHT));
        line("<title>%s</title>", escaped);
        line("<defs>");
        line("<pattern id=\"hatch\" width=\"1.5\" height=\"1.5\" patternUnits=\"userSpaceOnUse\">"
                + "<rect width=\"1.5\" height=\"1.5\" fill=\"#d9d9d9\"/>"
                + "<path d=\"M0 1.5L1.5 0\" stroke=\"#000000\" stroke-width=\"0.25\"/></pattern>");
        line("<pattern id=\"cross\" width=\"1.5\" height=\"1.5\" patternUnits=\"userSpaceOnUse\">"
                + "<rect width=\"1.5\" height=\"1.5\" fill=\"#ffffff\"/>"
                + "<path d=\"M0 1.5L1.5 0M0 0L1.5 1.5\" stroke=\"#000000\" stroke-width=\"0.25\"/></pattern>");
        line("</defs>");
        line("<text x=\"%s\" y=\"9\" font-size=\"5\">%s</text>", mm(LEFT), escaped);
        drawStretches(coverage.stretches());
        drawScale();
        drawLegend(coverage.summary());
        line("</svg>");
        return svg.toString();
    }

    private void drawStretches(List<Stretch> stretches) {
        line("<g id=\"travel\">");
        for (Stretch stretch : stretches) {
            double x = x(stretch.low());
            // The first count beyond it, so that neighbours meet.
            double width = x((double) stretch.high() + 1) - x;
            line("<rect class=\"%s\" x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" fill=\"%s\"><title>%s</title></rect>",
                    name(stretch.reached()), mm(x), mm(FLOOR - height(stretch.reached())), mm(width),
                    mm(height(stretch.reached())), fill(stretch.reached()), XmlText.of(words(stretch)));
        }
        line("</g>");
    }

    private String words(Stretch stretch) {
        return ReachedWords.of(stretch.reached()) + ": " + scale.format(stretch.low()) + " to "
                + scale.format(stretch.high());
    }

    private void drawScale() {
        line("<g id=\"scale\" text-anchor=\"middle\">");
        line("<path d=\"M%s %sH%s\" stroke=\"#000000\" stroke-width=\"0.35\"/>", mm(LEFT), mm(FLOOR), mm(LEFT + WIDTH));
        for (Ticks.Tick tick : Ticks.between(scale, low(), high())) {
            String x = mm(x(tick.at().doubleValue()));
            line("<path d=\"M%s %sV%s\" stroke=\"#000000\" stroke-width=\"0.25\"/>", x, mm(FLOOR), mm(FLOOR + 2));
            line("<text x=\"%s\" y=\"%s\">%s</text>", x, mm(FLOOR + 6), tick.label());
        }
        line("<text x=\"%s\" y=\"%s\">%s</text>", mm(LEFT + WIDTH + 11), mm(FLOOR + 6), Ticks.unit(scale));
        line("</g>");
    }

    private void drawLegend(CoverageSummary summary) {
        line("<g id=\"legend\">");
        for (Reached reached : Reached.values()) {
            double x = LEFT + reached.ordinal() * LEGEND_STEP;
            double height = height(reached) / 4;
            line("<rect x=\"%s\" y=\"%s\" width=\"8\" height=\"%s\" fill=\"%s\" stroke=\"#000000\" stroke-width=\"0.25\"/>",
                    mm(x), mm(LEGEND - height), mm(height), fill(reached));
            line("<text x=\"%s\" y=\"%s\">%s: %s of the travel</text>", mm(x + 10), mm(LEGEND),
                    ReachedWords.of(reached), Shares.of(summary, reached));
        }
        line("</g>");
    }

    private static String name(Reached reached) {
        return reached.name().toLowerCase(Locale.ROOT);
    }

    private static double height(Reached reached) {
        return switch (reached) {
            case CLEAN -> 20;
            case WORN -> 10;
            case NOT -> 4;
        };
    }

    private static String fill(Reached reached) {
        return switch (reached) {
            case CLEAN -> "#7f7f7f";
            case WORN -> "url(#hatch)";
            case NOT -> "url(#cross)";
        };
    }

    private long low() {
        return coverage.stretches().get(0).low();
    }

    private long high() {
        return coverage.stretches().get(coverage.stretches().size() - 1).high();
    }

    private double x(double position) {
        return LEFT + WIDTH * (position - low()) / ((double) high() - low() + 1);
    }

    /** A tenth of a micrometre on paper. */
    private static String mm(double value) {
        return String.format(Locale.ROOT, "%.4f", value);
    }

    private void line(String format, Object... values) {
        svg.append(values.length == 0 ? format : String.format(Locale.ROOT, format, values)).append('\n');
    }
}
