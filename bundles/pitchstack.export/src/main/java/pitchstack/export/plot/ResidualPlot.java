// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.plot;

import java.util.List;
import java.util.function.Predicate;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * What a fit leaves of each reading.
 *
 * @param points one a reading, at least one
 * @param positionUnit of the readings
 * @param errorUnit of what is left
 */
public record ResidualPlot(List<Point> points, PlotUnit positionUnit, PlotUnit errorUnit) implements Plot {
    /**
     * One reading.
     *
     * @param positionM where it was taken
     * @param residualM reading less fit
     * @param outlier whether it is farther off than chance explains
     */
    public record Point(double positionM, double residualM, boolean outlier) { }

    /** Copies the list. */
    public ResidualPlot {
        points = List.copyOf(points);
        if (points.isEmpty()) {
            throw new IllegalArgumentException("Nothing is left of no readings");
        }
    }

    @Override
    public Picture draw(PlotLook look) {
        LineChart chart = new LineChart(look, "Position, " + positionUnit.symbol(), "Left by the fit, "
                + errorUnit.symbol());
        double low = points.stream().mapToDouble(p -> positionUnit.of(p.positionM())).min().orElseThrow();
        double high = points.stream().mapToDouble(p -> positionUnit.of(p.positionM())).max().orElseThrow();
        Palette palette = look.palette();
        chart.line("Zero", new double[] {low, high}, new double[2], palette.text(), true).setShowInLegend(false);
        add(chart, "Reading", p -> !p.outlier(), palette.first(), SeriesMarkers.CIRCLE);
        add(chart, "Farther off than chance explains", Point::outlier, palette.mark(), SeriesMarkers.CROSS);
        double most = points.stream().mapToDouble(p -> errorUnit.of(Math.abs(p.residualM()))).max().orElseThrow();
        chart.show(low, high, -most, most);
        return chart.draw();
    }

    private void add(LineChart chart, String name, Predicate<Point> which, int colour, Marker marker) {
        List<Point> some = points.stream().filter(which).toList();
        if (!some.isEmpty()) {
            chart.points(name, some.stream().mapToDouble(p -> positionUnit.of(p.positionM())).toArray(),
                    some.stream().mapToDouble(p -> errorUnit.of(p.residualM())).toArray(), colour, marker);
        }
    }

    @Override
    public String description() {
        double largest = points.stream().mapToDouble(p -> Math.abs(p.residualM())).max().orElseThrow();
        long outliers = points.stream().filter(Point::outlier).count();
        return "What the fit leaves of " + points.size() + " readings, at most " + Figures.of(errorUnit.of(largest), 2)
                + " "
                + errorUnit.symbol() + "; " + (outliers == 0 ? "none is" : outliers == 1 ? "one is" : outliers + " are")
                + " farther off than chance explains.";
    }
}
