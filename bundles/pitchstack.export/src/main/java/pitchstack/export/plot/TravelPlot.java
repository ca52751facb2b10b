// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.plot;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * How far from what is counted the carriage may stand, along the travel: a band for all of it, and within it a band for
 * what does not repeat, which is left once everything is measured.
 *
 * @param points in the order of their positions, at least two
 * @param nowM where the carriage stands, marked where it lies in between
 * @param positionUnit of the travel
 * @param errorUnit of the errors
 */
public record TravelPlot(List<Point> points, double nowM, PlotUnit positionUnit, PlotUnit errorUnit) implements Plot {
    private static final double WIDE_PART = 0.25;
    private static final double NARROW_PART = 0.45;

    /**
     * One position.
     *
     * @param positionM where
     * @param withinM half the width of the band that holds the carriage with 95 % probability
     * @param varyingM half the width of what is left of it when all that repeats is measured
     */
    public record Point(double positionM, double withinM, double varyingM) { }

    /** Copies the list. */
    public TravelPlot {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException("A band needs two points");
        }
    }

    @Override
    public Picture draw(PlotLook look) {
        LineChart chart = new LineChart(look, "Position, " + positionUnit.symbol(), "Error, " + errorUnit.symbol());
        double[] x = values(p -> positionUnit.of(p.positionM()));
        double[] wide = values(p -> errorUnit.of(p.withinM()));
        double[] narrow = values(p -> errorUnit.of(p.varyingM()));
        Palette palette = look.palette();
        chart.band("Band of all", x, negative(wide), wide, palette.first(), WIDE_PART);
        chart.band("Band of what varies", x, negative(narrow), narrow, palette.second(), NARROW_PART);
        chart.line("All together, 95 %", x, wide, palette.first(), false);
        chart.line("All together, below", x, negative(wide), palette.first(), false).setShowInLegend(false);
        chart.line("What differs each time, 95 %", x, narrow, palette.second(), true);
        chart.line("What differs, below", x, negative(narrow), palette.second(), true).setShowInLegend(false);
        chart.styler().setXAxisMin(x[0]).setXAxisMax(x[x.length - 1]);
        double now = positionUnit.of(nowM);
        if (now >= x[0] && now <= x[x.length - 1]) {
            chart.mark(now);
        }
        return chart.draw();
    }

    private double[] values(ToDoubleFunction<Point> of) {
        return points.stream().mapToDouble(of).toArray();
    }

    private static double[] negative(double[] values) {
        double[] turned = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            turned[i] = -values[i];
        }
        return turned;
    }

    @Override
    public String description() {
        Point worst = points.stream().max((a, b) -> Double.compare(a.withinM(), b.withinM())).orElseThrow();
        Point best = points.stream().min((a, b) -> Double.compare(a.withinM(), b.withinM())).orElseThrow();
        return "Error along the travel. It is smallest at " + said(best) + ", and largest at " + said(worst) + ".";
    }

    private String said(Point p) {
        return Figures.of(positionUnit.of(p.positionM()), 4) + " " + positionUnit.symbol() + ": ±"
                + Figures.of(errorUnit.of(p.withinM()), 2) + " " + errorUnit.symbol() + ", of which ±"
                + Figures.of(errorUnit.of(p.varyingM()), 2) + " " + errorUnit.symbol() + " differs each time";
    }
}
