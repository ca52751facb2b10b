// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.plot;

import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.XYSeries.XYSeriesRenderStyle;

/**
 * What the lines and points of a chart are, in as many rows as its width asks for.
 *
 * @param look of the chart
 * @param metrics of its letters
 * @param line how long the piece of line before a name is
 */
record ChartLegend(PlotLook look, FontMetrics metrics, int line) {
    private static final double ROW_PART = 1.3;

    private int pad() {
        return metrics.getHeight() / 2;
    }

    private int row() {
        return (int) Math.ceil(ROW_PART * metrics.getHeight());
    }

    private int width(XYSeries series) {
        return line + pad() / 2 + metrics.stringWidth(series.getName());
    }

    /** How wide it is in one row. */
    int width(List<XYSeries> shown) {
        return shown.stream().mapToInt(series -> width(series) + 2 * pad()).sum() - pad();
    }

    /** How high it is in its rows. */
    int height(List<XYSeries> shown) {
        return rows(shown).size() * row() + pad();
    }

    private List<List<XYSeries>> rows(List<XYSeries> shown) {
        List<List<XYSeries>> rows = new ArrayList<>();
        for (XYSeries series : shown) {
            List<XYSeries> longer = rows.isEmpty() ? new ArrayList<>() : new ArrayList<>(rows.get(rows.size() - 1));
            longer.add(series);
            if (rows.isEmpty() || width(longer) > look.width()) {
                rows.add(List.of(series));
            } else {
                rows.set(rows.size() - 1, longer);
            }
        }
        return rows;
    }

    /** Paints it from a height on. */
    void paint(Graphics2D g, List<XYSeries> shown, int top) {
        int y = top;
        for (List<XYSeries> row : rows(shown)) {
            int x = Math.max(pad() / 2, (look.width() - width(row) + pad()) / 2);
            for (XYSeries series : row) {
                paint(g, series, x, y + row() / 2);
                x += width(series) + 2 * pad();
            }
            y += row();
        }
    }

    private void paint(Graphics2D g, XYSeries series, int x, int middle) {
        if (series.getXYSeriesRenderStyle() != XYSeriesRenderStyle.Scatter) {
            g.setColor(series.getLineColor());
            g.setStroke(series.getLineStyle());
            g.draw(new Line2D.Double(x, middle, x + line, middle));
        }
        g.setColor(series.getMarkerColor());
        series.getMarker().paint(g, x + line / 2.0, middle, metrics.getAscent() / 2);
        g.setColor(new Color(look.palette().text()));
        g.setFont(LineChart.font(look));
        g.drawString(series.getName(), x + line + pad() / 2, middle + (metrics.getAscent() - metrics.getDescent()) / 2);
    }
}
