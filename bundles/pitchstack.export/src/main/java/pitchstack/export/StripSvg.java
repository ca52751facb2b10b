// SPDX-License-Identifier: EPL-2.0
package pitchstack.export;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import pitchstack.core.coverage.Coverage;
import pitchstack.core.coverage.Reached;
import pitchstack.core.coverage.Stretch;
import pitchstack.core.units.Scale;

/**
 * The travel as a strip, a drawing in millimetres that fits across A4; or two strips, one above the other, of what is
 * reached now and what would be. Clean stretches are the highest and plain, those reached only over worn teeth are half as
 * high and hatched one way, those not reached are low and hatched both ways; the legend says so in words, and so does
 * each stretch where a viewer shows titles. Widths are true to scale. Where many stretches are too thin to be told apart,
 * columns stand for them.
 */
public final class StripSvg {
    /** From the left edge of the page to the lowest position, and from the lowest to the highest. */
    static final double LEFT = 20;
    static final double WIDTH = 257;

    private static final double PAGE = 297;
    private static final double FIRST_FLOOR = 40;
    private static final double FLOOR_STEP = 32;
    private static final double LEGEND_STEP = 86;
    private static final double LEGEND_LINE = 7;

    private final Scale scale;
    private final List<StripBars> strips;
    private final SvgText svg = new SvgText();

    private StripSvg(Scale scale, List<StripBars> strips) {
        this.scale = scale;
        this.strips = strips;
    }

    /**
     * The drawing of one strip.
     *
     * @param title what stands above it
     * @param scale the scale of the axis
     * @param coverage what to draw
     * @return the text of an SVG file; empty where there is no travel
     */
    public static Optional<String> of(String title, Scale scale, Coverage coverage) {
        return of(title, scale, List.of(new StripBars("", scale, coverage)));
    }

    /**
     * The drawing of two strips of the same travel.
     *
     * @param title what stands above them
     * @param scale the scale of the axis
     * @param now what is reached
     * @param supposed what would be reached, of the same axis
     * @param supposition what is supposed
     * @return the text of an SVG file; empty where there is no travel
     */
    public static Optional<String> of(String title, Scale scale, Coverage now, Coverage supposed, String supposition) {
        return of(title, scale, List.of(new StripBars("now", scale, now),
                new StripBars("supposed: " + supposition, scale, supposed)));
    }

    private static Optional<String> of(String title, Scale scale, List<StripBars> strips) {
        return strips.get(0).stretches().isEmpty() ? Optional.empty() : Optional.of(new StripSvg(scale, strips).draw(title));
    }

    private String draw(String title) {
        double height = legend() + LEGEND_LINE * (isMixed() ? 2 : 1);
        svg.line("<?xml version=\"1.0\" encoding=\"UTF-8\"?>");
        svg.line("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%smm\" height=\"%smm\" viewBox=\"0 0 %s %s\""
                + " font-family=\"sans-serif\" font-size=\"3.5\">", PAGE, height, PAGE, height);
        svg.line("<title>%s</title>", title);
        svg.line("<defs>");
        svg.line("<pattern id=\"hatch\" width=\"1.5\" height=\"1.5\" patternUnits=\"userSpaceOnUse\">"
                + "<rect width=\"1.5\" height=\"1.5\" fill=\"#ffffff\"/>"
                + "<path d=\"M-0.5 0.5L0.5 -0.5M0 1.5L1.5 0M1 2L2 1\" stroke=\"#000000\" stroke-width=\"0.3\"/></pattern>");
        svg.line("<pattern id=\"cross\" width=\"1.5\" height=\"1.5\" patternUnits=\"userSpaceOnUse\">"
                + "<rect width=\"1.5\" height=\"1.5\" fill=\"#ffffff\"/>"
                + "<path d=\"M0 1.5L1.5 0M0 0L1.5 1.5\" stroke=\"#000000\" stroke-width=\"0.2\"/></pattern>");
        svg.line("</defs>");
        svg.line("<rect width=\"%s\" height=\"%s\" fill=\"#ffffff\"/>", PAGE, height);
        svg.line("<text x=\"%s\" y=\"9\" font-size=\"5\">%s</text>", LEFT, title);
        for (int i = 0; i < strips.size(); i++) {
            strips.get(i).draw(svg, floor(i));
        }
        drawScale();
        drawLegend();
        svg.line("</svg>");
        return svg.toString();
    }

    private static double floor(int strip) {
        return FIRST_FLOOR + strip * FLOOR_STEP;
    }

    private double legend() {
        return floor(strips.size() - 1) + 16;
    }

    private boolean isMixed() {
        return strips.stream().anyMatch(StripBars::isMixed);
    }

    /** Marks under every strip, numbers under the lowest. */
    private void drawScale() {
        List<Stretch> stretches = strips.get(0).stretches();
        List<Ticks.Tick> ticks = Ticks.between(scale, stretches.get(0).low(), stretches.get(stretches.size() - 1).high());
        svg.line("<g id=\"scale\" text-anchor=\"middle\">");
        for (int i = 0; i < strips.size(); i++) {
            svg.line("<path d=\"M%s %sH%s\" stroke=\"#000000\" stroke-width=\"0.35\"/>", LEFT, floor(i), LEFT + WIDTH);
            for (Ticks.Tick tick : ticks) {
                double x = strips.get(0).x(tick.at().doubleValue());
                svg.line("<path d=\"M%s %sV%s\" stroke=\"#000000\" stroke-width=\"0.25\"/>", x, floor(i), floor(i) + 2);
            }
        }
        double numbers = floor(strips.size() - 1) + 6;
        for (Ticks.Tick tick : ticks) {
            svg.line("<text x=\"%s\" y=\"%s\">%s</text>", strips.get(0).x(tick.at().doubleValue()), numbers, tick.label());
        }
        svg.line("<text x=\"%s\" y=\"%s\">%s</text>", LEFT + WIDTH + 11, numbers, Ticks.unit(scale));
        svg.line("</g>");
    }

    private void drawLegend() {
        svg.line("<g id=\"legend\">");
        for (Reached reached : Reached.values()) {
            double x = LEFT + reached.ordinal() * LEGEND_STEP;
            double height = StripBars.height(reached) / 4;
            svg.line("<rect x=\"%s\" y=\"%s\" width=\"8\" height=\"%s\" fill=\"%s\" stroke=\"#000000\""
                    + " stroke-width=\"0.25\"/>", x, legend() - height, height, StripBars.fill(reached));
            svg.line("<text x=\"%s\" y=\"%s\">%s</text>", x + 10, legend(),
                    ReachedWords.of(reached) + ": " + shares(reached));
        }
        if (isMixed()) {
            svg.line("<text x=\"%s\" y=\"%s\">%s</text>", LEFT, legend() + LEGEND_LINE,
                    "Where stretches are too thin to draw, a column stacks their shares: clean, worn only, and pale for what"
                    + " is not reached.");
        }
        svg.line("</g>");
    }

    private String shares(Reached reached) {
        return strips.size() == 1 ? strips.get(0).share(reached) + " of the travel"
                : strips.stream().map(strip -> strip.share(reached)).collect(Collectors.joining(" now, ", "", " supposed"));
    }
}
