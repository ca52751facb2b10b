// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.plot;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.knowm.xchart.AnnotationLine;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.XYSeries.XYSeriesRenderStyle;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;

/** Lines, points and bands over numbers, in our colours. */
final class LineChart {
    private static final float LINE = 2f;
    private static final float HAIR = 1f;
    private static final float DASH = 6f;
    private static final int APART_DASHES = 4;
    private static final double GRID_PART = 0.15;
    private static final double BORDER_PART = 0.5;
    private static final double PLOT_PART = 0.97;
    /** Of the height of the text. */
    private static final double MARKER_PART = 0.6;
    private static final double LEAST_TITLE = 0.7;
    /** So that numbers along the bottom stand apart. */
    private static final int TICKS_APART = 6;
    /** What is left free around points, as a part of their range. */
    private static final double ROOM = 0.06;

    private final XYChart chart;
    private final PlotLook look;

    /** @param x title of the axis across, with its unit */
    LineChart(PlotLook look, String x, String y) {
        this.look = look;
        chart = new XYChart(look.width(), look.height());
        chart.setXAxisTitle(x);
        chart.setYAxisTitle(y);
        style(chart.getStyler());
    }

    private void style(XYStyler s) {
        Palette p = look.palette();
        Font font = font(look);
        s.setBaseFont(font).setChartBackgroundColor(new Color(p.ground())).setChartFontColor(new Color(p.text()));
        // The library's legend is cut where it is wider than the chart.
        s.setLegendVisible(false);
        s.setPlotBackgroundColor(new Color(p.ground())).setPlotBorderColor(p.faint(p.text(), BORDER_PART))
                .setPlotContentSize(PLOT_PART).setChartPadding((int) (look.textPt() / 2))
                .setMarkerSize((int) (look.textPt() * MARKER_PART));
        s.setPlotGridLinesColor(p.faint(p.text(), GRID_PART)).setPlotGridLinesStroke(new BasicStroke(HAIR / 2))
                .setPlotMargin(0)
                .setAxisTitleFont(font).setAxisTickLabelsFont(font).setAxisTickLabelsColor(new Color(p.text()))
                .setAxisTickMarksColor(p.faint(p.text(), BORDER_PART)).setLocale(Locale.ROOT);
        s.setxAxisTickLabelsFormattingFunction(Figures::plain);
        s.setyAxisTickLabelsFormattingFunction(Figures::plain);
        s.setXAxisTickMarkSpacingHint((int) (TICKS_APART * look.textPt()));
        s.setErrorBarsColorSeriesColor(true);
        s.setAnnotationLineColor(new Color(p.mark())).setAnnotationLineStroke(new BasicStroke(LINE,
                BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, HAIR, new float[] {2, 2}, 0));
    }

    static Font font(PlotLook look) {
        return new Font(Font.SANS_SERIF, Font.PLAIN, 1).deriveFont(look.textPt());
    }

    XYChart xchart() {
        return chart;
    }

    XYStyler styler() {
        return chart.getStyler();
    }

    /** A line without marks. */
    XYSeries line(String name, double[] x, double[] y, int colour, boolean dashed) {
        double[][] points = EvenLine.prepared(x, y, dashed ? APART_DASHES * DASH : 0, look);
        return marked(name, points[0], points[1], null, colour, dashed, SeriesMarkers.NONE);
    }

    /**
     * A line with marks.
     *
     * @param spread half the length of the bar on each mark, or null for none
     */
    XYSeries marked(String name, double[] x, double[] y, double[] spread, int colour, boolean dashed, Marker marker) {
        XYSeries series = chart.addSeries(name, x, y, spread);
        series.setMarker(marker).setMarkerColor(new Color(colour));
        series.setLineColor(new Color(colour)).setLineStyle(stroke(dashed));
        return series;
    }

    /** Marks without a line. */
    XYSeries points(String name, double[] x, double[] y, int colour, Marker marker) {
        XYSeries series = marked(name, x, y, null, colour, false, marker);
        series.setXYSeriesRenderStyle(XYSeriesRenderStyle.Scatter);
        return series;
    }

    /** A band of a faint colour between two lines over the same x; it has no line in the legend. */
    void band(String name, double[] x, double[] low, double[] high, int colour, double part) {
        int n = x.length;
        double[] around = new double[2 * n];
        double[] edge = new double[2 * n];
        for (int i = 0; i < n; i++) {
            around[i] = x[i];
            edge[i] = high[i];
            around[2 * n - 1 - i] = x[i];
            edge[2 * n - 1 - i] = low[i];
        }
        XYSeries series = chart.addSeries(name, around, edge);
        series.setXYSeriesRenderStyle(XYSeriesRenderStyle.PolygonArea);
        series.setFillColor(look.palette().faint(colour, part));
        series.setLineColor(look.palette().faint(colour, part));
        series.setMarker(SeriesMarkers.NONE);
        series.setShowInLegend(false);
    }

    /** Shows a range of both axes, with some room around it. */
    void show(double lowX, double highX, double lowY, double highY) {
        double x = room(lowX, highX);
        double y = room(lowY, highY);
        styler().setXAxisMin(lowX - x).setXAxisMax(highX + x).setYAxisMin(lowY - y).setYAxisMax(highY + y);
    }

    private static double room(double low, double high) {
        return high > low ? ROOM * (high - low) : 1;
    }

    /** A dotted line straight up at a place. */
    void mark(double x) {
        chart.addAnnotation(new AnnotationLine(x, true, false));
    }

    private static BasicStroke stroke(boolean dashed) {
        return dashed ? new BasicStroke(LINE, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, HAIR, new float[] {DASH,
                DASH / 2}, 0)
                : new BasicStroke(LINE, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    }

    Picture draw() {
        List<XYSeries> shown = chart.getSeriesMap().values().stream().filter(XYSeries::isShowInLegend).toList();
        ChartLegend legend = new ChartLegend(look, metrics(font(look)), styler().getLegendSeriesLineLength());
        int height = Math.max(1, look.height() - legend.height(shown));
        fitTitles(height);
        return paint(look, g -> {
            g.setColor(new Color(look.palette().ground()));
            g.fillRect(0, 0, look.width(), look.height());
            chart.paint(g, look.width(), height);
            legend.paint(g, shown, height);
        });
    }

    /** Where letters are large for the chart, titles get smaller rather than cut. */
    private void fitTitles(int height) {
        int pad = styler().getChartPadding();
        // Below the lines there are numbers and a title.
        int room = height - 2 * (metrics(font(look)).getHeight() + pad) - 2 * pad;
        double scale = Math.min((double) room / Math.max(width(chart.getYAxisTitle()), width(chart.getYAxisGroupTitle(1))),
                (double) look.width() / width(chart.getXAxisTitle()));
        styler().setAxisTitleFont(font(look).deriveFont((float) (look.textPt()
                * Math.max(LEAST_TITLE, Math.min(1, scale)))));
    }

    private int width(String title) {
        return title == null || title.isEmpty() ? 1 : metrics(font(look)).stringWidth(title);
    }

    private static FontMetrics metrics(Font font) {
        Graphics2D g = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
        FontMetrics metrics = g.getFontMetrics(font);
        g.dispose();
        return metrics;
    }

    /** Paints into memory with as many pixels to a point as are asked for. */
    static Picture paint(PlotLook look, Consumer<Graphics2D> painter) {
        BufferedImage image = new BufferedImage((int) Math.round(look.width() * look.scale()),
                (int) Math.round(look.height() * look.scale()), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        try {
            g.scale(look.scale(), look.scale());
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            painter.accept(g);
        } finally {
            g.dispose();
        }
        return Picture.of(image);
    }
}
