// SPDX-License-Identifier: EPL-2.0
package pitchstack.benchmarks;

import java.awt.BasicStroke;
import java.awt.Color;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.knowm.xchart.BitmapEncoder;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.Styler;
import org.knowm.xchart.style.lines.SeriesLines;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;

/** Times in microseconds over some measure of work, both on logarithmic scales, as a picture. */
final class Plot {
    private static final int WIDTH = 820;
    private static final int HEIGHT = 440;
    private static final float GRID_WIDTH = 0.5f;
    /** Lines differ by their markers too, and not by colour alone. */
    private static final Marker[] MARKERS = {SeriesMarkers.CIRCLE, SeriesMarkers.SQUARE, SeriesMarkers.TRIANGLE_UP,
        SeriesMarkers.DIAMOND};
    private static final Color[] COLOURS = {new Color(0x1f4e79), new Color(0xb35900), new Color(0x2e6b34),
        new Color(0x6b2e6b)};

    private final String title;
    private final String work;
    private final Map<String, List<double[]>> lines = new LinkedHashMap<>();

    Plot(String title, String work) {
        this.title = title;
        this.work = work;
    }

    /** Adds a point to a line, and prints it. */
    void add(String line, double x, double microseconds) {
        System.out.printf(Locale.ROOT, "| %s | %s | %.0f %s | %.3g µs |%n", title, line, x, work, microseconds);
        lines.computeIfAbsent(line, name -> new ArrayList<>()).add(new double[] {x, microseconds});
    }

    /** Writes the picture as PNG, which the help of the program shows. */
    void write(Path file) throws IOException {
        XYChart chart = new XYChartBuilder().width(WIDTH).height(HEIGHT).title(title).xAxisTitle(work)
                .yAxisTitle("µs").build();
        chart.getStyler().setXAxisLogarithmic(true).setYAxisLogarithmic(true)
                .setLegendPosition(Styler.LegendPosition.OutsideS).setLegendLayout(Styler.LegendLayout.Horizontal)
                .setChartBackgroundColor(Color.WHITE);
        // Dashes would be written one by one.
        chart.getStyler().setPlotGridLinesStroke(new BasicStroke(GRID_WIDTH));
        int i = 0;
        for (Map.Entry<String, List<double[]>> line : lines.entrySet()) {
            XYSeries series = chart.addSeries(line.getKey(), line.getValue().stream().mapToDouble(p -> p[0]).toArray(),
                    line.getValue().stream().mapToDouble(p -> p[1]).toArray());
            series.setMarker(MARKERS[i % MARKERS.length]).setMarkerColor(COLOURS[i % COLOURS.length]);
            series.setLineColor(COLOURS[i % COLOURS.length]).setLineStyle(SeriesLines.SOLID);
            i++;
        }
        BitmapEncoder.saveBitmap(chart, file.toString(), BitmapEncoder.BitmapFormat.PNG);
    }
}
