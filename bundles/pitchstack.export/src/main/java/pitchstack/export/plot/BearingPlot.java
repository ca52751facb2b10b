// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.plot;

import java.util.Arrays;
import java.util.List;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.Styler;

/**
 * What a preload does to a joint: which part of the flanks bears, and how far the teeth's own errors may leave it off.
 *
 * @param points at rising preloads, at least two
 * @param nowN the preload that is looked at, marked where it lies in between
 * @param errorUnit of the errors
 */
public record BearingPlot(List<Point> points, double nowN, PlotUnit errorUnit) implements Plot {
    private static final int PERCENT = 100;
    /** A little above all, so that a line at the top is not on the frame. */
    private static final double TOP_PERCENT = 104;
    private static final double HEADROOM = 1.15;

    /**
     * One preload.
     *
     * @param preloadN force
     * @param bearing part of the flanks that bears, from 0 to 1
     * @param errorM half the width of the band that holds the seat with 95 % probability
     */
    public record Point(double preloadN, double bearing, double errorM) { }

    /** Copies the list. */
    public BearingPlot {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException("A line needs two points");
        }
    }

    @Override
    public Picture draw(PlotLook look) {
        LineChart chart = new LineChart(look, "Preload, N", "Flanks that bear, %");
        double[] x = points.stream().mapToDouble(Point::preloadN).toArray();
        chart.line("Flanks that bear", x, points.stream().mapToDouble(p -> PERCENT * p.bearing()).toArray(),
                look.palette().first(), false);
        double[] errors = points.stream().mapToDouble(p -> errorUnit.of(p.errorM())).toArray();
        XYSeries error = chart.line("Error of the teeth, ± (95 %)", x, errors, look.palette().second(), true);
        error.setYAxisGroup(1);
        chart.xchart().setYAxisGroupTitle(0, "Flanks that bear, %");
        chart.xchart().setYAxisGroupTitle(1, "Error, ± " + errorUnit.symbol());
        chart.styler().setYAxisGroupPosition(1, Styler.YAxisPosition.Right);
        chart.styler().setYAxisMin(0, 0.0).setYAxisMax(0, TOP_PERCENT);
        chart.styler().setYAxisMin(1, 0.0).setYAxisMax(1, HEADROOM * Arrays.stream(errors).max().orElse(1));
        chart.styler().setXAxisMin(0.0).setXAxisMax(x[x.length - 1]);
        if (nowN >= 0 && nowN <= x[x.length - 1]) {
            chart.mark(nowN);
        }
        return chart.draw();
    }

    @Override
    public String description() {
        Point first = points.get(0);
        Point last = points.get(points.size() - 1);
        return "Preload against the flanks that bear and the error of the seat. From " + said(first) + " to "
                + said(last)
                + ".";
    }

    private String said(Point p) {
        return Figures.of(p.preloadN(), 3) + " N, where " + Figures.of(PERCENT * p.bearing(), 3)
                + " % bear and the error is ±"
                + Figures.of(errorUnit.of(p.errorM()), 2) + " " + errorUnit.symbol();
    }
}
