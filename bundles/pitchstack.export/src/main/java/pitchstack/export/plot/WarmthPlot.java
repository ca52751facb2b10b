// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.plot;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * How far warmth moves the carriage from where it stands at 20 °C, with the band of what is not known.
 *
 * @param points at rising temperatures, at least two
 * @param nowC the temperature today, marked where it lies in between
 * @param errorUnit of the movement
 * @param againstWork whether the growth of the work is taken away
 */
public record WarmthPlot(List<Point> points, double nowC, PlotUnit errorUnit, boolean againstWork) implements Plot {
    private static final double BAND_PART = 0.25;

    /**
     * One temperature.
     *
     * @param celsius the temperature
     * @param movedM how far the carriage is moved, towards higher positions
     * @param withinM half the width of the band that holds it with 95 % probability
     */
    public record Point(double celsius, double movedM, double withinM) { }

    /** Copies the list. */
    public WarmthPlot {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException("A line needs two points");
        }
    }

    @Override
    public Picture draw(PlotLook look) {
        LineChart chart = new LineChart(look, "Temperature, °C", "Moved, " + errorUnit.symbol());
        double[] x = values(Point::celsius);
        chart.band("Band", x, values(p -> errorUnit.of(p.movedM() - p.withinM())),
                values(p -> errorUnit.of(p.movedM() + p.withinM())), look.palette().first(), BAND_PART);
        chart.line(againstWork ? "Against the work; band 95 %" : "Carriage; band 95 %", x,
                values(p -> errorUnit.of(p.movedM())), look.palette().first(), false);
        chart.styler().setXAxisMin(x[0]).setXAxisMax(x[x.length - 1]);
        if (nowC >= x[0] && nowC <= x[x.length - 1]) {
            chart.mark(nowC);
        }
        return chart.draw();
    }

    private double[] values(ToDoubleFunction<Point> of) {
        return points.stream().mapToDouble(of).toArray();
    }

    @Override
    public String description() {
        return "Movement with warmth. " + said(points.get(0)) + " " + said(points.get(points.size() - 1));
    }

    private String said(Point p) {
        return "At " + Figures.of(p.celsius(), 3) + " °C " + Figures.of(errorUnit.of(p.movedM()), 2) + " ± "
                + Figures.of(errorUnit.of(p.withinM()), 2) + " " + errorUnit.symbol() + ".";
    }
}
