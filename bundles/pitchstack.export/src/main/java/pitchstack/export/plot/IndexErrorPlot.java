// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.plot;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.knowm.xchart.XYSeries.XYSeriesRenderStyle;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * How far single indices of stages stand off, each with the interval that holds its error with 95 % probability.
 *
 * @param stages one or more
 * @param errorUnit of the errors
 */
public record IndexErrorPlot(List<Stage> stages, PlotUnit errorUnit) implements Plot {
    private static final List<Marker> MARKERS = List.of(SeriesMarkers.CIRCLE, SeriesMarkers.SQUARE, SeriesMarkers.DIAMOND,
            SeriesMarkers.TRIANGLE_UP, SeriesMarkers.TRIANGLE_DOWN, SeriesMarkers.CROSS);

    /**
     * One stage.
     *
     * @param name what it is called
     * @param points its errors, at least one, by rising index
     */
    public record Stage(String name, List<Point> points) {
        /** Copies the list. */
        public Stage {
            points = List.copyOf(points);
            if (points.isEmpty()) {
                throw new IllegalArgumentException("“" + name + "” has no errors to show");
            }
        }
    }

    /**
     * One index.
     *
     * @param index which
     * @param errorM how far it stands off, in metres or radians
     * @param withinM half the width of the interval
     */
    public record Point(int index, double errorM, double withinM) {
        private boolean isLarge() {
            return Math.abs(errorM) > withinM;
        }
    }

    /** Copies the list. */
    public IndexErrorPlot {
        stages = List.copyOf(stages);
        if (stages.isEmpty()) {
            throw new IllegalArgumentException("No stage has errors to show");
        }
    }

    @Override
    public Picture draw(PlotLook look) {
        LineChart chart = new LineChart(look, "Index", "Error, " + errorUnit.symbol());
        Palette palette = look.palette();
        int[] colours = {palette.first(), palette.second(), palette.mark()};
        double low = all().mapToDouble(Point::index).min().orElseThrow();
        double high = all().mapToDouble(Point::index).max().orElseThrow();
        chart.line("Zero", new double[] {low, high}, new double[2], palette.text(), true).setShowInLegend(false);
        for (int i = 0; i < stages.size(); i++) {
            List<Point> points = stages.get(i).points();
            chart.marked(stages.get(i).name(), points.stream().mapToDouble(Point::index).toArray(),
                    points.stream().mapToDouble(p -> errorUnit.of(p.errorM())).toArray(),
                    points.stream().mapToDouble(p -> errorUnit.of(p.withinM())).toArray(), colours[i % colours.length], false,
                    MARKERS.get(i % MARKERS.size())).setXYSeriesRenderStyle(XYSeriesRenderStyle.Scatter);
        }
        double[] ends = all().flatMapToDouble(p -> DoubleStream.of(p.errorM() - p.withinM(), p.errorM() + p.withinM()))
                .map(errorUnit::of).toArray();
        chart.show(low, high, DoubleStream.of(ends).min().orElseThrow(), DoubleStream.of(ends).max().orElseThrow());
        return chart.draw();
    }

    private Stream<Point> all() {
        return stages.stream().flatMap(stage -> stage.points().stream());
    }

    @Override
    public String description() {
        return stages.stream().map(this::sentence).collect(Collectors.joining(" "));
    }

    private String sentence(Stage stage) {
        double most = stage.points().stream().mapToDouble(p -> Math.abs(p.errorM())).max().orElseThrow();
        long large = stage.points().stream().filter(Point::isLarge).count();
        return stage.name() + ": errors of " + stage.points().size() + " indices, at most " + Figures.of(errorUnit.of(most), 2)
                + " " + errorUnit.symbol() + "; " + (large == 0 ? "none is" : large == 1 ? "one is" : large + " are")
                + " larger than chance explains (95 %).";
    }
}
